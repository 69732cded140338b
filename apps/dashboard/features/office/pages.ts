/** What an office looks after, in the order in which the office page lists it. Each has its words under `office.pages`. */
export interface OfficePage {
  key:
    | "settings"
    | "guides"
    | "ledger"
    | "keeping"
    | "webhooks"
    | "standingOrders"
    | "work"
    | "people"
    | "audit";
  href: string;
  /** For a lead alone. */
  lead?: true;
}

export const OFFICE_PAGES: readonly OfficePage[] = [
  { key: "people", href: "/office/people" },
  { key: "settings", href: "/settings" },
  { key: "guides", href: "/guides" },
  { key: "standingOrders", href: "/standing-orders" },
  { key: "work", href: "/office/work" },
  { key: "ledger", href: "/ledger" },
  { key: "keeping", href: "/office/keeping", lead: true },
  { key: "webhooks", href: "/office/webhooks", lead: true },
  { key: "audit", href: "/office/audit", lead: true },
];
