import type { Phrase } from '../../src/core/base/index.ts';
import { findMeasure } from '../../src/core/body/index.ts';
import { nameOfLine, nameOfPlace } from '../../src/core/seams/index.ts';
import type { CorePhrases } from '../../src/language/index.ts';

const nameOfMeasure = (id: string): Phrase => findMeasure(id)!.name;

const WEB: Phrase = { id: 'brace.web', values: { side: 'right' } };
const WAIST = nameOfPlace('waist');
const PRINCESS = nameOfLine('princess front');
const SLEEVE: Phrase = { id: 'arm.half', values: { half: 'front', side: 'right' } };

/** What none of the bodies, files and forms made here brings about. */
export const RARE: { readonly [Id in keyof CorePhrases]?: CorePhrases[Id] } = {
  'body.section-crosses': { level: nameOfPlace('waist') },
  'body.not-faired': {},
  'body.wall-alone': { count: 2, least: 3 },
  'body.height-alone': { measure: nameOfMeasure('bustHeight'), needed: nameOfMeasure('waistHeight') },
  'body.photo-too-near': { photo: 'side', least: 1000 },
  'body.photo-unreadable': { photo: 'front' },
  'body.photo-few-points': { photo: 'side', count: 2, least: 3 },
  'body.photo-box-differs': { measure: nameOfMeasure('waistDepth'), photo: 'side', gap: 25.5, size: 'large' },
  'body.photo-point-off': { photo: 'front', of: 'left', height: 873.5, gap: 31.5 },
  'flatten.outline-crosses': { places: 2 },
  'verdict.sound': { strain: 0.0185 },
  'verdict.partners': { letter: 'AB', gap: 0.85 },
  'tube.measured': { growth: 0.0172 },
  'flatten.kept-length': { wanted: 120.25, got: 121.5 },
  'file.wrong-value': { field: 'cloth.allowance' },
  'stand.stem-too-thick': { stem: 22, bore: 21.5 },
  'buy.packing': {},
  'part.gain': { without: 3.1, with: 2.6, at: 'throat', atWithout: 10.2, atWith: 4.5 },
  'buy.packing.note': { thickness: 2.5 },
  'core.sticks-out': { name: 'Katze', by: 2.5, height: -42.5, limit: 1.5, isRefused: true },
  'core.smaller': { tapes: [{ name: { id: 'measure.neckBaseGirth.name', values: {} }, under: 31.5 }] },
  'core.verdict': { name: 'Katze', isAnew: true },
  'trial.leave-open': { letters: ['D', 'K'] },
  'trial.head-does-not-pass': { girth: 372, least: 590 },
  'cloth.usual-allowance-withdrawn': {
    edges: { id: 'allowance.armhole', values: {} },
    piece: { id: 'plate.base', values: {} },
    allowance: 11.5,
  },
  'brace.centre-line': { half: 'back' },
  'inside.webs-on-other-side': {
    side: 'both',
    over: 4,
    remedy: { id: 'inside.take-webs-on-panels', values: {} },
  },
  'inside.cloth-gives-way-as-measured': { level: WAIST, girth: 900, mostGrowth: 0.5 },
  'inside.line-leaves-panels': { line: { id: 'brace.web-line', values: { half: 'front' } }, side: 'left' },
  'opening.for-straps': { number: 3 },
  'inside.little-cloth-between': {
    brace: WEB,
    opening: { id: 'opening.for-strap', values: { number: 2 } },
    other: { id: 'opening.for-fill', values: { number: 4 } },
    left: 7.5,
    least: 15,
  },
  'inside.throat-web-without-room': { room: 14, least: 50 },
  'inside.plate-vanishes-under-cover': { plate: 'armhole', side: 'both', cover: 38, most: 24 },
  'measure.of-side': { measure: WAIST, side: 'left' },
  'filled.size-off': { level: WAIST, size: 'width', by: 4.5, isLess: true },
  'seam.with-letter': { seam: WAIST, letter: { id: 'verbatim', values: { text: 'AB' } } },
  'step.test-tube.reckoned': { growth: 0.0075 },
  'step.test-tube.usual-cloth': { below: 6, above: 14 },
  'filled.idle': { braces: [WEB] },
  'filled.place-off': { by: 11, isLess: false, at: nameOfPlace('waist'), over: WAIST, within: 0.985 },
  'pipeline.not-fitted': { reasons: [{ id: 'statics.everted', values: {} }] },
  'pipeline.broken-promise': { reason: '3 ≠ 4' },
  'pipeline.defect': { reason: '3 ≠ 4' },
  'plan.title': { project: '1001' },
  'plan.seam': { letter: 'AB' },
  'plan.caution': { text: nameOfPlace('waist') },
  'advice.move-points': {
    line: PRINCESS,
    moves: [
      { point: 2, mm: 12.4, way: 'to-front' },
      { point: 3, mm: 5, way: 'up' },
      { point: 1, mm: 6, way: 'on-round-armhole' },
      { mm: 8, way: 'down' },
    ],
  },
  'advice.add-line': { line: PRINCESS },
  'advice.step-move': { lines: [PRINCESS, nameOfLine('side')], mm: 15, way: 'to-bust-point' },
  'advice.step-add': { line: PRINCESS },
  'advice.gain': {
    step: { id: 'advice.step-move', values: { lines: [PRINCESS], mm: 5 } },
    reach: 40,
    near: { before: 0.0312, after: 0.0187 },
    form: { before: 0.0141, after: 0.0129 },
  },
  'advice.layout-unsound': { layout: { id: 'layout.upright8.name', values: {} } },
  'advice.nothing-helps': { most: 30 },
  'line.middle': { panel: SLEEVE },
  'piece.edge-mark': { edge: WAIST, number: 2 },
  'numbers.allowances': { left: 10, right: 12.5, bottom: 15, top: 20, unit: 'cm' },
  'arm.outer-line': { panel: SLEEVE },
  'arm.seam': { line: 'outer', side: 'right' },
  'arm.join': { line: 'inner', side: 'left' },
  'level.on-panel': { level: WAIST, panel: SLEEVE },
  'seam.lettered': { letter: 'AB', seam: PRINCESS },
  'fault.of': { of: SLEEVE, fault: { id: 'disk.pinched', values: {} } },
  'fault.no-arms': {
    of: { id: 'arm.join', values: { line: 'outer', side: 'left' } },
    fault: { id: 'disk.handle', values: {} },
  },
  'seams.line-leaves-surface': { line: PRINCESS },
  'seams.line-meets-level-often': { line: PRINCESS, level: WAIST, times: 3 },
  'seams.level-outside-form': { level: WAIST },
  'seams.panel-not-split': { panel: SLEEVE },
};
