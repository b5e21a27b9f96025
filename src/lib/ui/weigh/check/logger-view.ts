import type { Dialect } from '#lib/core/logger/dialect.ts';
import type { Picture } from '#lib/core/logger/picture.ts';
import type { LoggerChoice, LoggerRows } from '#lib/core/logger/read-rows.ts';
import type { Refusal } from '#lib/core/units/result.ts';
import type { LoggerFindings } from '#lib/core/weigh/logger-findings.ts';

/** A recording that was read, as far as a page shows it. */
export interface ReadLog extends LoggerFindings {
	readonly choice: LoggerChoice;
	readonly rows: Omit<LoggerRows, 'series'>;
	readonly from: number;
	readonly to: number;
}

/** A logger's file on its way to a system test; who reads it is not the page's business. */
export interface LoggerView {
	readonly state: 'empty' | 'looking' | 'looked' | 'reading' | 'read' | 'refused';
	readonly name: string;
	readonly progress: number;
	readonly rowsSoFar: number;
	readonly dialect: Dialect | undefined;
	readonly read: ReadLog | undefined;
	readonly picture: Picture | undefined;
	readonly refusal: Refusal | undefined;
	open(file: File): void;
	start(choice: LoggerChoice): void;
	draw(from: number, to: number): void;
	cancel(): void;
	close(): void;
}
