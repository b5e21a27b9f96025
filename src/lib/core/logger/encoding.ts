/** How the text of a file is encoded, by its first bytes; UTF-8 where they say nothing. */
export function encodingOf(first: Uint8Array): 'utf-8' | 'utf-16le' | 'utf-16be' {
	const [a, b] = first;
	if (a === 0xff && b === 0xfe) return 'utf-16le';
	return a === 0xfe && b === 0xff ? 'utf-16be' : 'utf-8';
}
