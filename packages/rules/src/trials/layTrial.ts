import { z } from "zod";
import { refuse } from "../core/errors.ts";
import { int, num, parseAtTheDoor, word } from "../core/fields.ts";
import { FactorSchema, type Plot, TRIAL_DESIGNS, type TrialDesign } from "../states/trial.ts";
import { combinationsOf } from "./combinations.ts";
import { type Place, placesFor } from "./places.ts";
import { shufflerOf } from "./shuffle.ts";

const LayTrialSchema = z.strictObject({
  design: word("design", TRIAL_DESIGNS),
  factors: z.array(FactorSchema).min(1).max(3),
  /** Blocks; pairs of strips; completely randomised: plots a treatment. */
  blocks: int("blocks, or plots a treatment", "blocks", 2, 200),
  seed: int("seed of the layout", "seed", 0, 4_294_967_295),
  /** In the order in which they are filled. */
  beds: z
    .array(z.strictObject({ id: z.string().min(1).max(64), lengthM: num("length", "m", 0.2, 2000) }))
    .min(1)
    .max(100),
  plotLengthM: num("length of a plot along the bed", "m", 0.1, 2000),
  /** Left unmeasured between two plots, against what leaks over. */
  gapM: num("gap between plots", "m", 0, 100).optional(),
});
export type LayTrial = z.infer<typeof LayTrialSchema>;

/** More than a plot's number holds. */
const PLOTS_AT_MOST = 1000;

/**
 * Which plot gets what, at random as the seed decides, on the grower's own beds. Plots are numbered as one walks them.
 *
 * Completely randomised: one shuffle over all plots. Blocks: every treatment once in each, shuffled block by block. Paired
 * strips: two side by side, never parted, a fresh order in each pair (Fisher 1935).
 *
 * @throws DomainError naming the field, and what would fit, where the design does not suit the factors or the beds are too short
 */
export function layTrial(raw: LayTrial): Plot[] {
  const input = parseAtTheDoor(LayTrialSchema, raw);
  checkFactors(input.design, input.factors);
  const treatments = combinationsOf(input.factors);
  if (treatments.length * input.blocks > PLOTS_AT_MOST) {
    const most = Math.floor(PLOTS_AT_MOST / treatments.length);
    refuse(
      "blocks",
      `make more than ${PLOTS_AT_MOST} plots`,
      `at most ${most} with ${treatments.length} treatments`,
      input.blocks,
    );
  }
  const blocks = placesOf(input, treatments.length) ?? tooShort(input, treatments.length);
  const shuffle = shufflerOf(input.seed);
  const whole = input.design === "completely-randomised";
  const given = whole ? shuffle(blocks.flatMap(() => treatments)) : blocks.flatMap(() => shuffle(treatments));
  return numbered(
    input,
    blocks.flatMap((places, b) =>
      places.map((place, i) => ({
        ...place,
        ...(whole ? {} : { block: b + 1 }),
        levels: given[b * treatments.length + i] ?? [],
      })),
    ),
  );
}

type Laid = Place & { block?: number; levels: string[] };

/** Numbers as one walks: bed after bed, from its first end. */
function numbered({ beds, plotLengthM }: LayTrial, laid: Laid[]): Plot[] {
  const order = new Map(beds.map((bed, i) => [bed.id, i]));
  return laid
    .sort((a, b) => (order.get(a.bedId) ?? 0) - (order.get(b.bedId) ?? 0) || a.fromM - b.fromM)
    .map((plot, i) => ({ id: `plot-${i + 1}`, number: i + 1, ...plot, lengthM: plotLengthM }));
}

function checkFactors(design: TrialDesign, factors: LayTrial["factors"]): void {
  if (design === "factorial-blocks") {
    if (factors.length < 2)
      refuse("factors", "are too few for a factorial", "2 or 3 factors", factors.length);
    return;
  }
  if (factors.length > 1)
    refuse(
      "factors",
      "are more than this design compares",
      "1 factor, or the design factorial-blocks",
      factors.length,
    );
  const levels = factors[0]?.levels.length ?? 0;
  if (design === "paired-strips" && levels !== 2)
    refuse("factors.0.levels", "must be two: a pair of strips compares two things", "2 levels", levels);
}

const placesOf = ({ design, blocks, beds, plotLengthM, gapM = 0 }: LayTrial, plots: number) =>
  design === "completely-randomised"
    ? (placesFor(beds, { blocks: blocks * plots, plots: 1, mayPart: true }, { plotLengthM, gapM })?.reduce<
        Place[][]
      >((made, [place], i) => {
        if (i % plots === 0) made.push([]);
        if (place) made.at(-1)?.push(place);
        return made;
      }, []) ?? null)
    : placesFor(beds, { blocks, plots, mayPart: design !== "paired-strips" }, { plotLengthM, gapM });

/** Says how many blocks would go in at this length, and how long plots may be for as many as were asked. */
function tooShort(input: LayTrial, plots: number): never {
  const fits = (change: Partial<LayTrial>) => placesOf({ ...input, ...change }, plots) !== null;
  let blocks = input.blocks - 1;
  while (blocks >= 2 && !fits({ blocks })) blocks -= 1;
  let cm = Math.ceil(input.plotLengthM * 100) - 1;
  while (cm >= 10 && !fits({ plotLengthM: cm / 100 })) cm -= 1;
  const ways = [
    ...(blocks >= 2
      ? [`at most ${blocks} ${input.design === "completely-randomised" ? "plots a treatment" : "blocks"}`]
      : []),
    ...(cm >= 10 ? [`plots of at most ${cm / 100} m`] : []),
  ];
  const accepted = ways.length > 0 ? ways.join(", or ") : "longer or more beds";
  if (blocks >= 2) refuse("blocks", `of ${plots} plots do not fit on these beds`, accepted, input.blocks);
  refuse(
    cm >= 10 ? "plotLengthM" : "beds",
    `does not leave room for 2 blocks of ${plots} plots`,
    accepted,
    cm >= 10 ? input.plotLengthM : input.beds.length,
  );
}
