import { settleLanguage } from '#lib/session/language.ts';

/** No page is loaded before its words are there. */
export const init = settleLanguage;
