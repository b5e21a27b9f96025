import type { Choice } from '../../air/evidence/effective-area.ts';
import { STARTING_SOAP_BANDS, type SoapBands } from '../../air/evidence/soap-response.ts';
import type { Evidence } from '../../survey/evidence-schema.ts';
import { find } from '../../survey/ids.ts';
import { cubicMetreFromLitre, metreFromMillimetre, toSi } from '../../units/convert.ts';
import type { WeighedLeak } from '../weigh-leak.ts';
import { given, made, READING, there, type Origin, type QuantityId, type Working } from './tree.ts';

/** What the evidence's working needs of the air: made once for the leak's line. */
export interface EvidenceAir {
	readonly flux: Working;
	/** Density of the site's own air, which is what a bag or a bubble catches. */
	readonly siteDensity: Working;
	readonly soapBands: SoapBands;
}

/** From what was seen or measured of a leak to its effective area. METHOD A7 to A12, W12. */
export function areaWorking(leak: WeighedLeak, evidence: Evidence, air: EvidenceAir): Working {
	const { flow, scaling } = leak;
	const { area } = flow;
	const inputs = inputsOf(evidence, area.choices, air);
	const doubt = { relativeUncertainty: area.relativeStandardUncertainty };
	if (scaling === undefined)
		return made('effective-area', area.areaM2, 'm²', area.basis, inputs, doubt);
	const estimate = made('effective-area', area.areaM2 / scaling, 'm²', area.basis, inputs, doubt);
	const source = 'taken over from a system test';
	return made(
		'effective-area',
		area.areaM2,
		'm²',
		'W12',
		[estimate, given('test-scaling', scaling, '', { kind: 'cited', source })],
		doubt
	);
}

function inputsOf(evidence: Evidence, choices: readonly Choice[], air: EvidenceAir): Working[] {
	const doubt = chosen('uncertainty', choices, 'relative-standard-uncertainty');
	switch (evidence.kind) {
		case 'hole': {
			const areaM2 = (Math.PI / 4) * metreFromMillimetre(evidence.diameterMm) ** 2;
			const sizes = [read('hole-diameter', evidence.diameterMm)];
			return [...opening(areaM2, sizes, choices), ...doubt];
		}
		case 'slit': {
			const { lengthMm, widthMm } = evidence;
			const areaM2 = metreFromMillimetre(lengthMm) * metreFromMillimetre(widthMm);
			const sizes = [read('slit-length', lengthMm), read('slit-width', widthMm)];
			return [...opening(areaM2, sizes, choices), ...doubt];
		}
		case 'thread-gap': {
			const { threadDiameterMm, gapMm } = evidence;
			const areaM2 = Math.PI * metreFromMillimetre(threadDiameterMm) * metreFromMillimetre(gapMm);
			const sizes = [read('thread-diameter', threadDiameterMm), read('thread-gap', gapMm)];
			return [...opening(areaM2, sizes, choices), ...doubt];
		}
		case 'bubble-growth': {
			const volume = (Math.PI / 6) * metreFromMillimetre(evidence.bubbleDiameterMm) ** 3;
			const diameter = read('bubble-diameter', evidence.bubbleDiameterMm);
			const bubble = made('caught-volume', volume, 'm³', 'A9', [diameter]);
			return [...caught(bubble, evidence.seconds, air), ...doubt];
		}
		case 'bag': {
			const volume = given('caught-volume', cubicMetreFromLitre(evidence.volumeL), 'm³', READING);
			return [...caught(volume, evidence.seconds, air), ...doubt];
		}
		case 'soap-response':
			return [...soapBand(evidence.response, choices, air.soapBands), ...doubt];
		case 'meter': {
			const flow = toSi('volumeFlow', 'L/s', evidence.flowLPerS);
			const stated = chosen('reference-density', choices, 'reference-density');
			const massFlow = made(
				'caught-mass-flow',
				flow * there(stated[0], 'reference-density').value,
				'kg/s',
				'A11',
				[given('meter-flow', flow, 'm³/s', READING), ...stated]
			);
			return [massFlow, air.flux, ...doubt];
		}
		case 'catalogue':
			return [given('sonic-conductance', evidence.cDm3PerSBar, 'dm³/(s·bar)', READING), ...doubt];
	}
}

/** Air caught at the site's own pressure and temperature, as a mass flow. METHOD A9. */
function caught(volume: Working, seconds: number, { siteDensity, flux }: EvidenceAir): Working[] {
	const massFlow = (volume.value / seconds) * siteDensity.value;
	return [
		made('caught-mass-flow', massFlow, 'kg/s', 'A9', [
			volume,
			given('caught-time', seconds, 's', READING),
			siteDensity
		]),
		flux
	];
}

function read(id: QuantityId, millimetres: number): Working {
	return given(id, millimetres, 'mm', READING);
}

function opening(areaM2: number, sizes: Working[], choices: readonly Choice[]): Working[] {
	return [
		...chosen('discharge-coefficient', choices, 'discharge-coefficient'),
		made('opening-area', areaM2, 'm²', 'A8', sizes)
	];
}

function soapBand(response: string, choices: readonly Choice[], bands: SoapBands): Working[] {
	const hole = there(choice(choices, 'equivalent-hole'), 'equivalent-hole');
	const starting: SoapBands = STARTING_SOAP_BANDS;
	const band = there(find(bands, response) ?? find(starting, response), 'band-low');
	const origin: Origin = { kind: 'cited', source: hole.source };
	return [
		made('equivalent-hole', hole.value, 'mm', 'A10', [
			given('band-low', band.lowMm, 'mm', origin),
			given('band-high', band.highMm, 'mm', origin)
		])
	];
}

function choice(choices: readonly Choice[], name: string): Choice | undefined {
	return choices.find((each) => each.name === name);
}

/** A number that the method chose, with its source. */
function chosen(id: QuantityId, choices: readonly Choice[], name: string): Working[] {
	const found = choice(choices, name);
	if (!found) return [];
	const unit = found.unit === 'kg/m³' ? 'kg/m³' : id === 'uncertainty' ? 'share' : '';
	return [given(id, found.value, unit, { kind: 'cited', source: found.source })];
}
