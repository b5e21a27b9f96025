import type { LeakAssessment } from '#lib/core/weigh/assessment.ts';
import type { Change } from '#lib/core/weigh/what-if.ts';

/** What stands in the fields of the panel. */
export interface Trial {
	readonly pressureStepBar: number;
	readonly mendFirst: number;
	readonly hoursShare: number;
	readonly pricePerKwh: number | undefined;
	/** Empty for none. */
	readonly machineId: string;
	readonly machineOffIn: readonly string[];
	readonly airOffIn: readonly string[];
}

export const NOTHING_TRIED: Trial = {
	pressureStepBar: 0,
	mendFirst: 0,
	hoursShare: 1,
	pricePerKwh: undefined,
	machineId: '',
	machineOffIn: [],
	airOffIn: []
};

/** The fields as a change to try; `leaks` give the ones that are mended first. */
export function changeOf(trial: Trial, leaks: readonly LeakAssessment[]): Change {
	const { pressureStepBar, mendFirst, hoursShare, pricePerKwh, machineId, airOffIn } = trial;
	return {
		...(pressureStepBar !== 0 && { pressureStepBar }),
		...(mendFirst > 0 && {
			mended: leaks.filter(({ rank }) => rank <= mendFirst).map(({ leakId }) => leakId)
		}),
		...(hoursShare < 1 && { hoursShare }),
		...(pricePerKwh !== undefined && { pricePerKwh }),
		...(machineId !== '' && { machineOff: { compressorId: machineId, in: trial.machineOffIn } }),
		...(airOffIn.length > 0 && { airOffIn })
	};
}
