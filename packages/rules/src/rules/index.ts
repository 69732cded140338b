import type { Rule } from "../core/rule.ts";
import { coldRecordRule } from "./cold-record/index.ts";
import { coldTonightRule } from "./cold-tonight/index.ts";
import { companyRule } from "./company/index.ts";
import { containersRule } from "./containers/index.ts";
import { feedingRule } from "./feeding/index.ts";
import { hardeningRule } from "./hardening/index.ts";
import { hotterRule } from "./hotter/index.ts";
import { irrigateRule } from "./irrigate/index.ts";
import { limeRule } from "./lime/index.ts";
import { lookCloserRule } from "./look-closer/index.ts";
import { manureTimingRule } from "./manure-timing/index.ts";
import { nightHeatRule } from "./night-heat/index.ts";
import { ripeRule } from "./ripe/index.ts";
import { rotationRule } from "./rotation/index.ts";
import { saltRule } from "./salt/index.ts";
import { setOutRule } from "./set-out/index.ts";
import { settingDepthRule } from "./setting-depth/index.ts";
import { shedRule } from "./shed/index.ts";
import { soilReadingRule } from "./soil-reading/index.ts";
import { sowByRule } from "./sow-by/index.ts";
import { stageRule } from "./stage/index.ts";
import { tooHotRule } from "./too-hot/index.ts";
import { toppingRule } from "./topping/index.ts";
import { trialRule } from "./trial/index.ts";
import { whatIfRule } from "./what-if/index.ts";
import { woodAshRule } from "./wood-ash/index.ts";

/** Every rule, in the order of the catalogue. The cast holds because a rule is only handed states of its own subject. */
export const rules = [
  setOutRule,
  coldRecordRule,
  coldTonightRule,
  nightHeatRule,
  hardeningRule,
  sowByRule,
  irrigateRule,
  hotterRule,
  saltRule,
  tooHotRule,
  soilReadingRule,
  limeRule,
  feedingRule,
  shedRule,
  woodAshRule,
  manureTimingRule,
  containersRule,
  stageRule,
  ripeRule,
  settingDepthRule,
  toppingRule,
  lookCloserRule,
  trialRule,
  companyRule,
  rotationRule,
  whatIfRule,
] as Rule[];
