import type { SoapResponseId } from '#lib/core/air/evidence/soap-response.ts';
import type { EvidenceKind } from '#lib/core/survey/evidence-schema.ts';
import type { LeakState } from '#lib/core/survey/leak-state.ts';
import type { Action, Hazard, Part } from '#lib/core/survey/parts.ts';

/** What a leak is, where it stands and how it was sized. */
export const leak = {
	parts: {
		'threaded-joint': 'Threaded joint',
		'push-in-fitting': 'Push-in fitting',
		'quick-coupling': 'Quick coupling',
		hose: 'Hose',
		'hose-clip': 'Hose clip',
		'pipe-joint': 'Pipe joint',
		flange: 'Flange',
		valve: 'Valve',
		regulator: 'Regulator',
		'filter-bowl': 'Filter bowl',
		'lubricator-bowl': 'Lubricator bowl',
		gauge: 'Gauge',
		drain: 'Drain',
		cylinder: 'Cylinder',
		'blow-gun': 'Blow gun',
		tool: 'Tool',
		'pump-joint': 'Compressor pump joint',
		'pressure-vessel': 'Pressure vessel',
		other: 'Something else'
	} satisfies Record<Part, string>,
	hazards: {
		'at-height': 'At height',
		'hot-surface': 'Hot surface',
		'live-electrics': 'Live electrics',
		'moving-machinery': 'Moving machinery',
		'confined-space': 'Confined space',
		'rotary-screw': 'Rotary screw machine'
	} satisfies Record<Hazard, string>,
	actions: {
		'nip-up': 'Nip up',
		'remake-thread': 'Remake the thread',
		'replace-fitting': 'Replace the fitting',
		'replace-coupling': 'Replace the coupling',
		'replace-hose': 'Replace the hose',
		'replace-clip': 'Replace the clip',
		'replace-seal': 'Replace the seal',
		'replace-gasket': 'Replace the gasket',
		'replace-valve': 'Replace the valve',
		'replace-bowl': 'Replace the bowl',
		'replace-gauge': 'Replace the gauge',
		'mend-drain': 'Mend the drain',
		'close-off': 'Close off',
		'service-engineer': 'Call the service engineer',
		'out-of-service': 'Take out of service',
		other: 'Agree what to do'
	} satisfies Record<Action, string>,
	states: {
		leaking: 'Leaking',
		mended: 'Mended, to be re-soaped',
		tight: 'Tight',
		'not-reached': 'Not reached this round',
		unseen: 'Not looked at this round'
	} satisfies Record<LeakState, string>,
	evidence: {
		'soap-response': 'What the soap did',
		hole: 'Round hole',
		slit: 'Slit or crack',
		'thread-gap': 'Gap round a thread',
		'bubble-growth': 'One bubble, timed',
		bag: 'Bag filled, timed',
		meter: 'Flow meter reading',
		catalogue: 'Open part from a catalogue (ISO 6358)'
	} satisfies Record<EvidenceKind, string>,
	soap: {
		'now-and-then': 'A bubble now and then',
		'bubble-after-bubble': 'Bubble after bubble',
		'foam-cushion': 'A cushion of fine foam',
		'foam-spits': 'Foam that spits',
		'film-tears': 'Film tears, a hole stays',
		'film-blown-away': 'Film is blown away'
	} satisfies Record<SoapResponseId, string>,
	/** What the film does, at length. */
	soapLooks: {
		'now-and-then': 'a bubble now and then',
		'bubble-after-bubble': 'one bubble after another, each keeps its shape',
		'foam-cushion': 'a cushion of fine foam builds up',
		'foam-spits': 'foam builds and bursts, drops fly',
		'film-tears': 'the film tears open at once and a hole stays in the foam',
		'film-blown-away': 'the film is blown away and nothing can stay on the joint'
	} satisfies Record<SoapResponseId, string>,
	edges: {
		unknown: 'Not known',
		sharp: 'Sharp edge',
		rounded: 'Rounded edge'
	}
};
