/**
 * What the core cites as the source of a value, in passages as they stand there: a reader of another
 * language reads them in that one. A test finds the passage that the core has and this table lacks.
 */
export const sources = {
	passages: {
		ours: 'our starting value',
		ownBand: "the site's own band",
		own: 'entered by the user',
		starting: 'starting value: ',
		measuredHere: 'measured or entered at the site',
		notRead: 'not read: taken as that of the reference',
		sourcebook: 'US DOE / Compressed Air Challenge sourcebook, as quoted widely',

		edgeSharp: 'handbook multiplier 0.61; experiments span 0.56 to 0.84',
		edgeRounded: 'handbook multiplier 0.97; experiments span 0.92 to 0.99',
		edgeUnknown: 'midpoint of the handbook multipliers 0.61 and 0.97, either as likely',
		hole: 'a diameter judged by eye to 20 %, and the edge',
		slit: 'length judged to 10 %, width to 40 %, and the edge',
		threadGap: 'a gap judged to 50 %, and the edge',
		bubble: 'a diameter judged to 10 %, and a bubble that is not quite a sphere',
		bag: 'bag volume and full mark to 10 % each, some air lost at the mouth',
		meter: 'a meter inside its range, as piped in',
		catalogue: 'spread between pieces, and wear',

		iso1217: 'ISO 1217 (20 °C, 100 kPa, dry)',
		iso1217From: 'ISO 1217 annex C (from memory)',
		anrFrom: 'ISO 8778 (from memory); density computed 1.182 kg/m³, tables print 1.185',
		anr: 'ISO 8778 ANR (20 °C, 100 kPa, 65 % RH)',
		normal: 'DIN 1343 normal (0 °C, 101.325 kPa, dry)',
		normalFrom: 'DIN 1343 (read in an encyclopaedia page)',
		siteInlet: 'site inlet conditions (site pressure and temperature, dry)',

		receiver: 'one US gallon per cfm: common practice',
		purge: 'heatless desiccant dryers: common practice',
		startStop: 'the motor stops at cut-out; band 2 bar: common practice for small piston machines',
		loadUnload:
			'unloaded power 25 % and band 10 psi: R. Marshall, processnpower.com, 2014. Power at unloading ' +
			'85 % and blow-down 30 s: our starting values, chosen so that the part-load points printed for ' +
			'1 and 3 gallons of receiver per cfm are met. Never stopping: our starting value',
		throttled:
			'slope 0.3: Schmidt and Kissock, Power characteristics of industrial air compressors (from ' +
			'memory). Unloading at half flow: the middle of the 40 to 60 % printed in plantservices.com, ' +
			'Compressor capacity controls, 2006. Below: ',
		variableSpeed:
			'least speed 30 % at 35 % of the power, stopping after 5 minutes: our starting values. Below: '
	},
	/** The band of holes that a soap response stands for. */
	band: (low: string, high: string) => `nine in ten between ${low} and ${high} mm`,
	/** The machine that the specific power is taken from to begin with. */
	machine: (capacity: string, pressure: string) =>
		`a ${capacity} m³/min machine at ${pressure} bar that just meets the least efficiency of 10 CFR 431.345`
};
