/**
 * The characters that a TrueType font can draw, from its `cmap` table (formats 4 and 12, the two
 * that Unicode fonts carry). Only the basic plane counts: the page maker knows no other.
 * @source Apple TrueType Reference Manual, The 'cmap' table (from memory)
 */
export function charactersOf(font: Uint8Array): ReadonlySet<number> {
	const view = new DataView(font.buffer, font.byteOffset, font.byteLength);
	const characters = new Set<number>();
	const cmap = tableAt(view, 'cmap');
	for (let index = 0; index < view.getUint16(cmap + 2); index++) {
		const subtable = cmap + view.getUint32(cmap + 4 + index * 8 + 4);
		const format = view.getUint16(subtable);
		if (format === 4) addFormat4(view, subtable, characters);
		else if (format === 12) addFormat12(view, subtable, characters);
	}
	return characters;
}

/**
 * The characters in a text that a font lacks, each named once, e.g. `日 U+65E5`. Spaces and
 * characters that do not show are not missed.
 */
export function missingGlyphs(text: string, font: Uint8Array | ReadonlySet<number>): string[] {
	const known = font instanceof Uint8Array ? charactersOf(font) : font;
	const missing = new Set<string>();
	for (const character of text.normalize('NFC')) {
		const code = character.codePointAt(0) ?? 0;
		if (!known.has(code) && !/[\p{Cc}\p{Cf}\p{Z}]/u.test(character))
			missing.add(`${character} U+${code.toString(16).toUpperCase().padStart(4, '0')}`);
	}
	return [...missing];
}

function tableAt(view: DataView, tag: string): number {
	for (let index = 0; index < view.getUint16(4); index++) {
		const record = 12 + index * 16;
		const name = String.fromCharCode(...[0, 1, 2, 3].map((byte) => view.getUint8(record + byte)));
		if (name === tag) return view.getUint32(record + 8);
	}
	throw new RangeError(`the font has no ${tag} table`);
}

function addFormat4(view: DataView, at: number, characters: Set<number>): void {
	const segments = view.getUint16(at + 6) / 2;
	const ends = at + 14;
	const starts = ends + segments * 2 + 2;
	const deltas = starts + segments * 2;
	const offsets = deltas + segments * 2;
	for (let segment = 0; segment < segments; segment++) {
		const step = segment * 2;
		const start = view.getUint16(starts + step);
		const offset = view.getUint16(offsets + step);
		for (let code = start; code <= view.getUint16(ends + step) && code < 0xffff; code++) {
			const listed =
				offset === 0 ? code : view.getUint16(offsets + step + offset + (code - start) * 2);
			if (listed !== 0 && ((listed + view.getUint16(deltas + step)) & 0xffff) !== 0)
				characters.add(code);
		}
	}
}

function addFormat12(view: DataView, at: number, characters: Set<number>): void {
	for (let group = 0; group < view.getUint32(at + 12); group++) {
		const record = at + 16 + group * 12;
		const last = Math.min(view.getUint32(record + 4), 0xffff);
		for (let code = view.getUint32(record); code <= last; code++) characters.add(code);
	}
}
