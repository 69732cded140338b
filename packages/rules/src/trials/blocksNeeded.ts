import { parseAtTheDoor } from "../core/fields.ts";
import {
  type BlocksForPowerInput,
  blocksForPower,
  blocksForPowerQuantity,
  powerOfBlocks,
} from "../quantities/statistics/blocksForPower.ts";

/**
 * Blocks that a wanted power asks for, and the power that they then have, for whoever designs a trial.
 *
 * @throws DomainError naming the field that is out of range, or `differencePct` where no field trial would find it
 */
export function blocksNeeded(raw: BlocksForPowerInput): { blocks: number; power: number } {
  const input = parseAtTheDoor(blocksForPowerQuantity.schema, raw) as BlocksForPowerInput;
  const { blocks } = blocksForPower(input);
  return { blocks, power: powerOfBlocks(blocks, input) };
}
