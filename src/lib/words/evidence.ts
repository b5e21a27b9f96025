import type { SoapResponseId } from '#lib/core/air/evidence/soap-response.ts';
import type { EvidenceKind } from '#lib/core/survey/evidence-schema.ts';

/** How a leak was sized, in words. */
export const EVIDENCE_WORDS: Readonly<Record<EvidenceKind, string>> = {
	'soap-response': 'What the soap did',
	hole: 'Round hole',
	slit: 'Slit or crack',
	'thread-gap': 'Gap round a thread',
	'bubble-growth': 'One bubble, timed',
	bag: 'Bag filled, timed',
	meter: 'Flow meter reading',
	catalogue: 'Open part from a catalogue (ISO 6358)'
};

/** What the soap film does, short enough to stand under a picture. */
export const SOAP_WORDS: Readonly<Record<SoapResponseId, string>> = {
	'now-and-then': 'A bubble now and then',
	'bubble-after-bubble': 'Bubble after bubble',
	'foam-cushion': 'A cushion of fine foam',
	'foam-spits': 'Foam that spits',
	'film-tears': 'Film tears, a hole stays',
	'film-blown-away': 'Film is blown away'
};

export const EDGE_WORDS = {
	unknown: 'Not known',
	sharp: 'Sharp edge',
	rounded: 'Rounded edge'
} as const;
