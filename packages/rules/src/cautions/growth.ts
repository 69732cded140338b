import type { Caution } from "./types.ts";

/** What picking and keeping fruit can do to those who eat it. */
export const growthCautions: Caution[] = [
  {
    id: "harvest-interval",
    version: 1,
    severity: "danger",
    text: {
      en: "Fruit picked before a spray's pre-harvest interval has passed must not be eaten, sold or given away, whatever the weather. The label decides.",
      es: "Los frutos cosechados antes de que se cumplan los días antes de la cosecha de un plaguicida no se deben comer, vender ni regalar, haga el tiempo que haga. La etiqueta decide.",
    },
  },
  {
    id: "frosted-fruit",
    version: 1,
    severity: "warning",
    text: {
      en: "Fruit that has frozen leaks and rots within days, and others rot beside it. Keep it apart, and do not sell or preserve it.",
      es: "El fruto que se heló suelta agua y se pudre en días, y pudre a los que tiene al lado. Manténgalo aparte, y no lo venda ni lo ponga en conserva.",
    },
  },
];
