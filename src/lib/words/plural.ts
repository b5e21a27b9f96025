/** The words for each kind of number that a language tells apart. */
type Forms = Partial<Record<Intl.LDMLPluralRule, string>> & { readonly other: string };

/** Picks words by a number, by the plural rules of a language: `many(1, { one: 'leak', other: 'leaks' })`. */
export function pluralsOf(language: string): (count: number, forms: Forms) => string {
	const rules = new Intl.PluralRules(language);
	return (count, forms) => forms[rules.select(count)] ?? forms.other;
}
