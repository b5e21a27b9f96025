import type { Caution } from '#lib/core/mend/cautions.ts';
import { cautions as english } from './en/cautions.ts';
import { wordsOf } from './language.ts';

const cautions = wordsOf('cautions', english);

/** A caution in the language that is spoken, whole. */
export function cautionText({ id, text }: Pick<Caution, 'id' | 'text'>): string {
	return cautions[id] ?? text;
}

/**
 * What each caution is about, in few words: for the folded row of a job, where the whole caution is one tap
 * away. They stand beside the cautions and never in their place: prints and tables carry the whole text.
 */
const IN_SHORT: Readonly<Record<string, string>> = {
	C1: 'Isolate, lock, vent, prove zero',
	C2: 'Local rules first',
	C3: 'Vessel out of service',
	C4: 'Safety valve: hands off',
	C5: 'Service engineer only',
	C6: 'Find the valve first',
	C7: 'Stored air',
	C8: 'See the gauge fall',
	C9: 'Eye protection',
	C10: 'Mains locked off',
	C11: 'Starts by itself',
	C12: 'Tank empty first',
	C13: 'Bowl can burst',
	C14: 'Regulator holds pressure',
	C15: 'Machine can move',
	C16: 'Hose whips',
	C17: 'Tool can start',
	C18: 'Blow gun',
	C19: 'Blowing out: mask',
	C20: 'Nip up vented only',
	C21: 'Compound sets overnight',
	C22: 'Live electrics: no soap',
	C23: 'Hot surface',
	C24: 'At height',
	C25: 'Confined space',
	C26: 'Agree the job first',
	C27: 'No ammonia on brass',
	C28: 'Air back slowly',
	C29: 'Drain opened empty only',
	C30: 'Oily condensate',
	C31: 'Timed drain can open',
	C32: 'Filter: machine stopped',
	C33: 'Oil: machine stopped',
	C34: 'Belt guard on',
	C35: 'Maker’s torque'
};

/** What a caution is about; a caution without short words is said whole, never left out. */
export function cautionInShort({ id, text }: Pick<Caution, 'id' | 'text'>): string {
	return IN_SHORT[id] ?? text;
}
