import { currentLanguage, type Language } from './language.ts';

/** The parts of the guide in their order: the names by which a page links to its own part. */
export const GUIDE_PARTS = [
	'start',
	'set-up',
	'walk',
	'weigh',
	'mend',
	'prove',
	'files',
	'safety'
] as const;

const TEXTS: Readonly<Record<Language, () => Promise<{ default: string }>>> = {
	en: () => import('./guide/guide.en.md?raw'),
	de: () => import('./guide/guide.de.md?raw')
};

/** The guide as Markdown, in the language that is spoken. */
export async function guideText(): Promise<string> {
	return (await TEXTS[currentLanguage()]()).default;
}
