import { refuse, type Refusal, type Result, ok } from '../units/result.ts';

/** No logger writes a longer row; a longer "line" is another kind of file. */
const LONGEST_LINE = 65_536;

/** Cuts a text that comes in pieces into lines, numbered from 1; refuses what is no text. */
export class LineCutter {
	#rest = '';
	#number = 0;
	#end: '\n' | '\r' | undefined;
	readonly #take: (line: string, number: number) => Refusal | undefined;

	constructor(take: (line: string, number: number) => Refusal | undefined) {
		this.#take = take;
	}

	/** @returns `logger-not-text`, `logger-line-too-long`, or what the taker of lines refuses */
	push(piece: string): Result<true> {
		const binary = piece.includes('\0');
		this.#end ??= piece.includes('\n') ? '\n' : piece.includes('\r') ? '\r' : undefined;
		const end = this.#end;
		let from = 0;
		for (let at = end ? piece.indexOf(end) : -1; at >= 0; at = piece.indexOf(end ?? '\n', from)) {
			// Only the first line is put together: joined with the rest, all of the piece would be copied.
			const refusal = this.#line(this.#rest + piece.slice(from, at), binary);
			if (refusal) return { ok: false, error: refusal };
			this.#rest = '';
			from = at + 1;
		}
		this.#rest += piece.slice(from);
		if (binary) return refuse('logger-not-text', { line: this.#number + 1 });
		return this.#rest.length > LONGEST_LINE
			? refuse('logger-line-too-long', { line: this.#number + 1, most: LONGEST_LINE })
			: ok(true);
	}

	/** The last line, which may have no end of its own. */
	finish(): Result<true> {
		const last = this.#rest;
		this.#rest = '';
		const refusal = last === '' ? undefined : this.#line(last, false);
		return refusal ? { ok: false, error: refusal } : ok(true);
	}

	#line(raw: string, binary: boolean): Refusal | undefined {
		this.#number += 1;
		if (raw.length > LONGEST_LINE)
			return { code: 'logger-line-too-long', detail: { line: this.#number, most: LONGEST_LINE } };
		if (binary && raw.includes('\0'))
			return { code: 'logger-not-text', detail: { line: this.#number } };
		let line = raw.endsWith('\r') ? raw.slice(0, -1) : raw;
		if (this.#number === 1 && line.charCodeAt(0) === 0xfeff) line = line.slice(1);
		return this.#take(line, this.#number);
	}
}
