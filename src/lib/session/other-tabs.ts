import type { Command } from '#lib/core/survey/command.ts';
import { readLog } from '#lib/core/survey/log.ts';

/** Tells the other tabs of this device that have a site open what was written, and hears it of them. */
export class OtherTabs {
	readonly #channel: BroadcastChannel | undefined;

	constructor(siteId: string, onCommands: (commands: readonly Command[]) => void) {
		if (typeof BroadcastChannel === 'undefined') return;
		this.#channel = new BroadcastChannel(`airtally-${siteId}`);
		this.#channel.onmessage = ({ data }: MessageEvent<unknown>) => {
			if (Array.isArray(data)) onCommands(readLog(data).commands);
		};
	}

	tell(commands: readonly Command[]): void {
		this.#channel?.postMessage(commands);
	}

	close(): void {
		this.#channel?.close();
	}
}
