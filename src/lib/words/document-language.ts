import { currentLanguage, type Language } from './language.ts';

/** How each language is named in a document, for those who have it read out. */
const IN_DOCUMENTS = { en: 'en-GB', de: 'de' } as const satisfies Record<Language, string>;
export type DocumentLanguage = (typeof IN_DOCUMENTS)[Language];

/** The language of what is made now, BCP 47. */
export function documentLanguage(): DocumentLanguage {
	return IN_DOCUMENTS[currentLanguage()];
}
