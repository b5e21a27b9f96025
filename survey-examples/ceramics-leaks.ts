import type { Evidence } from '../src/lib/core/survey/evidence-schema.ts';
import type { Hazard, Part, Action } from '../src/lib/core/survey/parts.ts';
import type { SoapResponseId } from '../src/lib/core/air/evidence/soap-response.ts';
import type { SectionKey } from './ceramics-sections.ts';
import type { Point } from './plan-ink.ts';

/** One leak as it was found. All of it is invented. */
export interface Found {
	readonly section: SectionKey;
	/** Metres from the sheet's upper left corner. */
	readonly at: Point;
	readonly part: Part;
	readonly place: string;
	readonly evidence: Evidence;
	readonly action?: Action;
	readonly hazards?: readonly Hazard[];
	readonly pressureBarGauge?: number;
	readonly intermittent?: { readonly openSeconds: number; readonly everySeconds: number };
	readonly note?: string;
}

const soap = (response: SoapResponseId): Evidence => ({ kind: 'soap-response', response });
const hole = (diameterMm: number, edge: 'sharp' | 'rounded' | 'unknown' = 'unknown'): Evidence => ({
	kind: 'hole',
	diameterMm,
	edge
});
const slit = (lengthMm: number, widthMm: number): Evidence => ({
	kind: 'slit',
	lengthMm,
	widthMm,
	edge: 'sharp'
});
const ring = (threadDiameterMm: number, gapMm: number): Evidence => ({
	kind: 'thread-gap',
	threadDiameterMm,
	gapMm,
	edge: 'unknown'
});
/** The soap was looked at first, then the flow was measured. */
const bag = (volumeL: number, seconds: number, soapResponse: SoapResponseId): Evidence => ({
	kind: 'bag',
	volumeL,
	seconds,
	soapResponse
});
const meter = (flowLPerS: number, soapResponse?: SoapResponseId): Evidence => ({
	kind: 'meter',
	flowLPerS,
	reference: 'anr',
	...(soapResponse && { soapResponse })
});

/** In the order of the walk; the tag is the place in this list, from 1. */
export const FOUND: readonly Found[] = [
	{
		section: 'compressors',
		at: [13.7, 25.1],
		part: 'drain',
		place: 'Receiver R1, timed drain at floor level',
		evidence: hole(3, 'rounded'),
		intermittent: { openSeconds: 8, everySeconds: 60 },
		note: 'Timer set far too long; no water comes after the first second.'
	},
	{
		section: 'compressors',
		at: [10.9, 26.8],
		part: 'flange',
		place: 'Machine C2, discharge flange behind the cooler',
		evidence: soap('film-tears'),
		action: 'service-engineer',
		hazards: ['hot-surface', 'rotary-screw']
	},
	{
		section: 'compressors',
		at: [11.7, 31.2],
		part: 'filter-bowl',
		place: 'Dryer, filter before it, bowl thread',
		evidence: hole(0.8)
	},
	{
		section: 'compressors',
		at: [14.9, 28.9],
		part: 'pressure-vessel',
		place: 'Receiver R2, rust patch by the lower seam, door side',
		evidence: soap('bubble-after-bubble'),
		note: 'Paint has lifted around it. Shown to the shift leader at once.'
	},
	{
		section: 'compressors',
		at: [16.5, 27.2],
		part: 'gauge',
		place: 'Header after R2, gauge at eye level',
		evidence: ring(13, 0.02)
	},
	{
		section: 'workshop',
		at: [17.2, 37.2],
		part: 'quick-coupling',
		place: 'Stores, wall coupling beside the door',
		evidence: soap('film-blown-away')
	},
	{
		section: 'workshop',
		at: [13.3, 37.5],
		part: 'blow-gun',
		place: 'Bench, blow gun on its hook, trigger valve passes',
		evidence: { kind: 'catalogue', cDm3PerSBar: 0.17, b: 0.3 },
		note: 'Figures of the valve insert, taken as open by the stuck seat.'
	},
	{
		section: 'workshop',
		at: [6.6, 40.2],
		part: 'hose',
		place: 'West wall, hose reel, crack at the first turn',
		evidence: slit(4, 0.3)
	},
	{
		section: 'slip',
		at: [8, 16.9],
		part: 'pump-joint',
		place: 'Pump P2, centre block, exhaust side',
		evidence: meter(2.6, 'film-blown-away')
	},
	{
		section: 'slip',
		at: [8, 13.4],
		part: 'pump-joint',
		place: 'Pump P1, air inlet elbow',
		evidence: soap('film-tears')
	},
	{
		section: 'slip',
		at: [8.7, 8.2],
		part: 'regulator',
		place: 'Ark 1, agitator regulator, bonnet vent',
		evidence: soap('foam-spits')
	},
	{
		section: 'slip',
		at: [12.6, 7.3],
		part: 'threaded-joint',
		place: 'Ark 2, drop, union under the tee',
		evidence: soap('film-tears'),
		hazards: ['at-height']
	},
	{
		section: 'slip',
		at: [11.3, 14.5],
		part: 'cylinder',
		place: 'Filter press, closing cylinder, rod seal',
		evidence: soap('film-blown-away'),
		hazards: ['moving-machinery']
	},
	{
		section: 'slip',
		at: [19.4, 14.6],
		part: 'hose-clip',
		place: 'Filter press, hose tail at the drop',
		evidence: hole(1.5)
	},
	{
		section: 'presses',
		at: [23.4, 19.4],
		part: 'valve',
		place: 'Press 4, ball valve on the drop, gland',
		evidence: hole(1.2)
	},
	{
		section: 'presses',
		at: [24.2, 15],
		part: 'push-in-fitting',
		place: 'Ware conveyor, west end, blow-off manifold',
		evidence: soap('film-tears')
	},
	{
		section: 'presses',
		at: [25.5, 9.2],
		part: 'push-in-fitting',
		place: 'Press 1, left-hand column, tube at knee height',
		evidence: soap('foam-cushion')
	},
	{
		section: 'presses',
		at: [29.6, 10.2],
		part: 'cylinder',
		place: 'Press 1, feed shoe cylinder, rear cap',
		evidence: soap('film-tears'),
		hazards: ['moving-machinery']
	},
	{
		section: 'presses',
		at: [33.6, 8.2],
		part: 'valve',
		place: 'Press 2, valve bank on top, third from left',
		evidence: soap('film-blown-away'),
		action: 'replace-seal',
		hazards: ['at-height', 'live-electrics']
	},
	{
		section: 'presses',
		at: [41.9, 10.6],
		part: 'quick-coupling',
		place: 'Press 3, right-hand column, coupling at hip height',
		evidence: hole(1.5)
	},
	{
		section: 'presses',
		at: [39, 9.1],
		part: 'lubricator-bowl',
		place: 'Press 3, lubricator, bowl seal',
		evidence: soap('film-tears')
	},
	{
		section: 'presses',
		at: [42.9, 19.4],
		part: 'hose',
		place: 'Press 6, power pack, hose split behind the ferrule',
		evidence: slit(6, 0.25),
		note: 'Hose rubs on the frame: clip it away when it is replaced.'
	},
	{
		section: 'presses',
		at: [34.9, 20.5],
		part: 'filter-bowl',
		place: 'Press 5, air set, filter bowl drain',
		evidence: bag(10, 14, 'film-tears')
	},
	{
		section: 'presses',
		at: [27.8, 25.3],
		part: 'blow-gun',
		place: 'Fettling bench, west, gun hangs open on its hose',
		evidence: soap('film-blown-away')
	},
	{
		section: 'glaze',
		at: [24.8, 34.9],
		part: 'hose-clip',
		place: 'Booth 1, spray hose at the wall tail',
		evidence: soap('film-tears')
	},
	{
		section: 'glaze',
		at: [33.5, 33.9],
		part: 'regulator',
		place: 'Booth 2, fan-air regulator, diaphragm',
		evidence: soap('foam-spits')
	},
	{
		section: 'glaze',
		at: [25.4, 40.4],
		part: 'tool',
		place: 'Glaze tank, upper, agitator air motor runs in the empty tank',
		evidence: soap('film-blown-away'),
		action: 'close-off',
		note: 'Nobody shuts it when the tank is empty.'
	},
	{
		section: 'glaze',
		at: [28.6, 40.5],
		part: 'pump-joint',
		place: 'Pump P3, air valve cover',
		evidence: bag(20, 11, 'film-blown-away')
	},
	{
		section: 'glaze',
		at: [28.6, 43.3],
		part: 'pump-joint',
		place: 'Pump P4, muffler side, clamp band',
		evidence: soap('film-tears')
	},
	{
		section: 'glaze',
		at: [31.7, 49.8],
		part: 'threaded-joint',
		place: 'Booth 3, drop, reducer above the valve',
		evidence: ring(16.7, 0.04)
	},
	{
		section: 'glaze',
		at: [38.6, 48.8],
		part: 'cylinder',
		place: 'Stamper, lift cylinder, rod seal',
		evidence: soap('film-blown-away'),
		hazards: ['moving-machinery']
	},
	{
		section: 'kilns',
		at: [48.6, 10.6],
		part: 'cylinder',
		place: 'Kiln 1, entry door cylinder, lower end',
		evidence: hole(1.5),
		hazards: ['hot-surface', 'moving-machinery']
	},
	{
		section: 'kilns',
		at: [57, 8],
		part: 'pipe-joint',
		place: 'Kiln 1, preheat, purge line over the roof',
		evidence: soap('film-tears'),
		hazards: ['at-height', 'hot-surface']
	},
	{
		section: 'kilns',
		at: [68, 8.3],
		part: 'valve',
		place: 'Kiln 1, burner row north, purge valve 5 passes',
		evidence: soap('film-blown-away'),
		hazards: ['hot-surface', 'live-electrics']
	},
	{
		section: 'kilns',
		at: [87.2, 16.8],
		part: 'cylinder',
		place: 'Kiln 2, exit pusher, rod seal',
		evidence: hole(2),
		hazards: ['moving-machinery']
	},
	{
		section: 'kilns',
		at: [89.2, 22.4],
		part: 'flange',
		place: 'East wall branch, flanged tee above the drier',
		evidence: soap('film-tears'),
		hazards: ['at-height']
	},
	{
		section: 'kilns',
		at: [64.6, 24.3],
		part: 'valve',
		place: 'Kiln 4, damper valve, spindle',
		evidence: { kind: 'bubble-growth', bubbleDiameterMm: 12, seconds: 1.5 },
		hazards: ['hot-surface']
	},
	{
		section: 'sorting',
		at: [54, 33.2],
		part: 'push-in-fitting',
		place: 'Sorting 1, lane 2, tube at the reject arm',
		evidence: soap('foam-spits')
	},
	{
		section: 'sorting',
		at: [61, 33.9],
		part: 'other',
		place: 'Sorting 1, vacuum ejector of the idle lane left on',
		evidence: meter(3.4),
		action: 'close-off'
	},
	{
		section: 'sorting',
		at: [66.8, 39.8],
		part: 'push-in-fitting',
		place: 'Sorting 2, printer, back panel, lower row',
		evidence: soap('film-tears'),
		hazards: ['live-electrics']
	},
	{
		section: 'sorting',
		at: [49.8, 43],
		part: 'quick-coupling',
		place: 'Sorting 3, coupling at the head of the belt',
		evidence: soap('film-blown-away')
	},
	{
		section: 'sorting',
		at: [53.7, 46.7],
		part: 'cylinder',
		place: 'Box maker, flap cylinder, front cap',
		evidence: hole(1),
		hazards: ['moving-machinery']
	},
	{
		section: 'pallets',
		at: [80.8, 33.9],
		part: 'regulator',
		place: 'Strapper, air set, regulator bonnet',
		evidence: soap('film-tears')
	},
	{
		section: 'pallets',
		at: [73.8, 37.7],
		part: 'hose',
		place: 'Palletiser, gripper hose at the wrist',
		evidence: slit(5, 0.2),
		hazards: ['moving-machinery']
	},
	{
		section: 'pallets',
		at: [88.2, 38.6],
		part: 'quick-coupling',
		place: 'Wrapper, coupling at the wall drop',
		evidence: hole(2.5)
	},
	{
		section: 'pallets',
		at: [73.6, 50.2],
		part: 'valve',
		place: 'South wall, last drop, ball valve not plugged',
		evidence: soap('foam-cushion')
	}
];
