import { LANGUAGES } from "@pith/rules";
import fc from "fast-check";
import { expect, test } from "vitest";
import type { News } from "../../packages/services/src/delivery/news.ts";
import { placesOf, textOf } from "../../packages/services/src/delivery/textOf.ts";
import { whenText } from "../../packages/services/src/delivery/words.ts";

const news = (over: Partial<News>): News =>
  ({
    id: "1",
    channel: "text",
    about: "advice",
    advisoryId: "6f1c6a52-3d1f-4c0e-9a54-8f2c1d0b7e11",
    farmId: "2",
    attempts: 0,
    farmName: "Low Fell",
    phone: null,
    said: { decision: "Cubra esta noche.", cautions: [{ id: "a" }] },
    frost: true,
    actBy: "2026-11-30T10:00:00Z",
    stands: true,
    ...over,
  }) as unknown as News;

test("in every language a message is one, in the network's own letters, and says where the cautions are", () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...LANGUAGES),
      fc.constantFrom("advice" as const, "unread" as const),
      fc.string({ unit: "grapheme", maxLength: 60 }),
      (language, about, farmName) => {
        const said = textOf(news({ about, farmName }), {
          dashboardUrl: "https://pith.example",
          timeZone: "America/Chicago",
          language,
        });
        // 160 places of the 7-bit alphabet (3GPP TS 23.038).
        expect(placesOf(said) ?? 161).toBeLessThanOrEqual(160);
        expect(said).toContain("https://pith.example/");
        expect(said).toMatch(language === "es" ? /Lea las precauciones/ : /Read the cautions/);
        expect(said).not.toContain("..");
      },
    ),
    { numRuns: 300, seed: 11 },
  );
});

test("the hour is said by 24, whatever the language", () => {
  const at = "2026-11-30T22:30:00Z";
  expect(whenText(at, "America/Chicago", "en")).toContain("16:30");
  expect(whenText(at, "America/Chicago", "es")).toContain("16:30");
  expect(whenText(at, "America/Chicago", "es")).toMatch(/lunes/);
});
