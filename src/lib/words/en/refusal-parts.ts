/** What the sentences of refusals are filled in with. */
export const refusalParts = {
	unknown: (code: string) =>
		`This could not be done (${code}). Check what was entered and try again.`,
	limits: {
		from: (value: string) => `from ${value}`,
		above: (value: string) => `above ${value}`,
		to: (value: string) => `to ${value}`,
		below: (value: string) => `below ${value}`
	},
	perUnit: (unit: string, per: string) => `${unit} per ${per}`,
	absolute: 'Pa absolute',
	bytes: 'bytes',
	megapixels: 'megapixels'
};
