import { unitsOf } from '../engine/records.mjs';
import * as tools from './tools.mjs';
import * as crushing from './crushing.mjs';
import * as scales from './balance.mjs';
import * as reagents from './reagents.mjs';
import * as flame from './flame.mjs';

/** The model of each part. */
export const models = {
  blowpipe: tools.blowpipe, mouthpiece: tools.mouthpiece, jet: tools.jet, forceps: tools.forceps, 'wire-holder': tools.wireHolder,
  'platinum-wire': tools.platinumWire, 'wire-paper': tools.wirePaper, magnet: tools.magnet, key: tools.key,
  hammer: crushing.hammer, mortar: crushing.mortar, pestle: crushing.pestle, anvil: crushing.anvil, 'bead-tray': crushing.beadTray,
  'charcoal-borer': crushing.charcoalBorer, 'streak-plate': crushing.streakPlate, charcoal: crushing.charcoal,
  balance: scales.balance, weights: scales.weight, 'weights-block': scales.weightsBlock, rider: scales.rider, 'rider-capsule': scales.riderCapsule,
  'reagent-bottle': reagents.reagentBottle, fluxes: reagents.flux, 'mercury-bottle': reagents.mercuryBottle, 'lead-foil': reagents.leadFoil,
  'cyanide-bottle': reagents.cyanideBottle, 'acid-bottle': reagents.acidBottle,
  lamp: flame.lamp, 'lamp-cap': flame.lampCap, 'spirit-can': flame.spiritCan, 'spirit-flask': flame.spiritFlask, windscreen: flame.windscreen, 'heat-mat': flame.heatMat,
};

const patterns = { 'survey-pattern-1': '1', 'survey-pattern-1-upland': '1u', 'survey-pattern-2': '2', 'survey-pattern-3': '3' };
const wears = { 'as-made': 0, fine: 0.15, sound: 0.35, worn: 0.7, damaged: 0.85 };
const wearOf = (unit) => wears[unit?.condition] ?? 0.35;
const there = (unit) => ['present', 'substitute', 'unverified'].includes(unit.state);

/** What the models need to know of one item: its pattern, what was seen of its features, its marks, its parts unit by unit. */
export function outfitOf(item, variants, extra = {}) {
  const variant = variants.get(item.variant);
  const built = variants.get(extra.caseOf ?? item.variant);
  const one = (value) => (Array.isArray(value) ? undefined : value);
  const features = Object.fromEntries(Object.keys(built.features).map((f) => [f, item.features?.[f] ?? one(built.features[f]) ?? built.features[f][0]]));
  const ids = new Set([...Object.keys(variant.parts), ...Object.keys(extra.parts ?? {})]);
  const units = new Map([...ids].map((id) => [id, unitsOf(item.parts?.[id] ?? extra.parts?.[id], variant.parts[id]?.quantity ?? 1)]));
  const first = (id) => units.get(id)?.[0];
  return {
    planed: extra.planed, empty: extra.empty, pattern: patterns[item.variant], casePattern: patterns[extra.caseOf ?? item.variant], variant, features, units, there,
    wear: wearOf(first('case')), set: item.set, setMark: first('case')?.marks?.[0], trayMark: first('tray')?.marks?.[0],
    contract: features['contract-number'], fixing: features['plate-fixing'],
    plateSet: item.labels?.find((l) => l.part === 'contract-plate') ? (item.set ?? '') : item.set, plateWear: wearOf(first('contract-plate')),
  };
}

/** What a model is given for one unit. */
export const contextOf = (o, id, unit) => ({
  pattern: o.pattern, features: o.features, wear: wearOf(unit), set: unit.marks?.[0], mark: unit.marks?.[0], model: unit.model, state: unit.state, index: unit.index, part: unit, id, empty: o.empty,
});
