import type { Survey } from '#lib/core/survey/schema.ts';
import type { Result } from '#lib/core/units/result.ts';
import { totalsWithSoapBands } from '#lib/core/weigh/soap-bands.ts';
import { whatIf, type Change, type WhatIf } from '#lib/core/weigh/what-if.ts';

export type Asked =
	{ readonly kind: 'what-if'; readonly change: Change } | { readonly kind: 'soap-bands' };

/** What is asked of the worker. The survey is sent when it is another than the last one. */
export interface TrialRequest {
	readonly survey: Survey | undefined;
	readonly roundId: string;
	readonly asked: Asked;
}

export type TrialReply =
	| { readonly kind: 'what-if'; readonly answer: Result<Omit<WhatIf, 'survey'>> }
	| { readonly kind: 'soap-bands'; readonly answer: ReturnType<typeof totalsWithSoapBands> };

let survey: Survey | undefined;

function answer(of: Survey, roundId: string, asked: Asked): TrialReply {
	if (asked.kind === 'soap-bands')
		return { kind: asked.kind, answer: totalsWithSoapBands(of, roundId) };
	const found = whatIf(of, roundId, asked.change);
	if (!found.ok) return { kind: asked.kind, answer: found };
	const { survey: _, ...figures } = found.value;
	return { kind: asked.kind, answer: { ok: true, value: figures } };
}

addEventListener('message', ({ data }: MessageEvent<TrialRequest>) => {
	survey = data.survey ?? survey;
	if (survey) postMessage(answer(survey, data.roundId, data.asked));
});
