import type { Dialect } from '#lib/core/logger/dialect.ts';
import type { Picture } from '#lib/core/logger/picture.ts';
import type { LoggerChoice } from '#lib/core/logger/read-rows.ts';
import type { Refusal } from '#lib/core/units/result.ts';
import type { LoggerRead, LoggerReply, LoggerRequest } from './logger.worker.ts';

/**
 * A logger's file on its way to a system test, read beside the page: first looked at, then read with
 * the column that was chosen. Cancelling ends the worker, so nothing goes on unseen.
 */
export class LoggerFile {
	state = $state<'empty' | 'looking' | 'looked' | 'reading' | 'read' | 'refused'>('empty');
	name = $state('');
	/** Share of the file that was read, 0 to 1, and the rows so far. */
	progress = $state(0);
	rowsSoFar = $state(0);
	dialect = $state.raw<Dialect>();
	read = $state.raw<LoggerRead>();
	picture = $state.raw<Picture>();
	refusal = $state.raw<Refusal>();

	#worker: Worker | undefined;
	#file: File | undefined;

	/** Looks at the first lines and guesses how it is written. */
	open(file: File): void {
		this.close();
		this.#file = file;
		this.name = file.name;
		this.state = 'looking';
		this.#ask({ kind: 'look', file });
	}

	/** Reads all of it. */
	start(choice: LoggerChoice): void {
		if (!this.#file || this.state === 'reading') return;
		this.refusal = undefined;
		this.read = undefined;
		this.picture = undefined;
		this.progress = 0;
		this.rowsSoFar = 0;
		this.state = 'reading';
		this.#ask({ kind: 'read', file: this.#file, choice });
	}

	/** Draws a part of the recording. */
	draw(from: number, to: number): void {
		if (this.state === 'read') this.#ask({ kind: 'draw', from, to });
	}

	/** Stops at once, and goes back to the choice of the column. */
	cancel(): void {
		if (this.state !== 'reading' && this.state !== 'looking') return;
		this.#stop();
		this.state = this.dialect ? 'looked' : 'empty';
	}

	/** Lets the file and the worker go. */
	close(): void {
		this.#stop();
		this.#file = undefined;
		this.name = '';
		this.dialect = undefined;
		this.read = undefined;
		this.picture = undefined;
		this.refusal = undefined;
		this.state = 'empty';
	}

	#ask(request: LoggerRequest): void {
		const worker = (this.#worker ??= new Worker(
			// eslint-disable-next-line svelte/prefer-svelte-reactivity -- an address that never changes; Vite finds the worker by this form
			new URL('./logger.worker.ts', import.meta.url),
			{ type: 'module' }
		));
		worker.onmessage = (event: MessageEvent<LoggerReply>) => {
			// What a worker said before it was ended may still be on its way.
			if (this.#worker === worker) this.#take(event.data);
		};
		worker.onerror = () => this.#take({ kind: 'refused', refusal: { code: 'logger-unreadable' } });
		worker.postMessage(request);
	}

	#take(reply: LoggerReply): void {
		switch (reply.kind) {
			case 'looked':
				this.dialect = reply.dialect;
				this.state = 'looked';
				return;
			case 'progress':
				this.progress = reply.share;
				this.rowsSoFar = reply.rows;
				return;
			case 'read':
				this.read = reply.read;
				this.picture = reply.picture;
				this.progress = 1;
				this.state = 'read';
				return;
			case 'drawn':
				this.picture = reply.picture;
				return;
			case 'refused':
				this.refusal = reply.refusal;
				this.state = 'refused';
		}
	}

	#stop(): void {
		this.#worker?.terminate();
		this.#worker = undefined;
	}
}
