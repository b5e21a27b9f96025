import type { Round, Survey } from '#lib/core/survey/schema.ts';
import {
	stationReport,
	type ReportedPart,
	type StationReport
} from '#lib/core/weigh/station-report.ts';
import { ok } from '#lib/core/units/result.ts';
import type { Outcome } from '../command.ts';
import { complain, type Answer } from '../complaint.ts';
import type { Io } from '../io.ts';
import { figure, oneLine, percent, table } from '../plain-text.ts';
import { chooseRound, openingNotes, openSurvey } from '../survey-argument.ts';
import { partName, warningSentences } from '../year-warnings.ts';

/** What the station of a survey draws over its year, with the leaks and without. METHOD S10 to S13. */
export async function stationPower(
	path: string,
	asked: string | undefined,
	io: Io
): Promise<Answer<Outcome>> {
	const opened = await openSurvey(path, io);
	if (!opened.ok) return opened;
	const { survey, quarantined, conflicts } = opened.value;
	const chosen = chooseRound(survey, asked);
	if (!chosen.ok && asked !== undefined) return chosen;
	const round = chosen.ok ? chosen.value : undefined;
	const found = stationReport(survey, round?.id);
	if (!found.ok) return complain(found.error, `"${oneLine(path)}"`);
	const report = found.value;
	const { outcome, leaks } = report;
	const warnings = warningSentences(survey, outcome.warnings);
	return ok({
		text: textOf(survey, round, report),
		json: {
			site: survey.site.name,
			round: round ? { id: round.id, name: round.name, startedAt: round.startedAt } : null,
			method: 'supply',
			capacityM3PerMin: report.capacityM3PerMin,
			energyKwhPerYear: outcome.energyKwh,
			energyWithoutLeaksKwhPerYear: outcome.energyKwh - outcome.savingKwh,
			savingKwhPerYear: outcome.savingKwh,
			peakKw: outcome.peakKw,
			peakWithoutLeaksKw: outcome.peakWithoutKw,
			leaks,
			parts: report.parts.map((part) => partJson(survey, part)),
			warnings,
			quarantined: quarantined.length,
			conflicts: conflicts.length
		},
		notes: [
			...openingNotes(opened.value),
			...warnings.map(({ sentence }) => sentence),
			...(leaks.unweighed > 0
				? [`Leaks that could not be weighed and are not counted: ${leaks.unweighed}; see audit.`]
				: [])
		]
	});
}

function machineName(survey: Survey, machineId: string): string {
	const machines = survey.supply.station?.compressors ?? [];
	return machines.find(({ id }) => id === machineId)?.name ?? machineId;
}

function partJson(survey: Survey, { outcome, setPressureBarGauge, now }: ReportedPart) {
	return {
		id: outcome.id,
		name: partName(survey, outcome.id),
		hoursPerYear: outcome.hours,
		setPressureBarGauge: setPressureBarGauge ?? null,
		demandM3PerMin: outcome.delivered?.nowM3PerMin ?? null,
		demandWithoutLeaksM3PerMin: outcome.delivered?.withoutM3PerMin ?? null,
		powerKw: outcome.powerKw,
		powerWithoutLeaksKw: outcome.powerWithoutKw,
		energyKwhPerYear: outcome.energyKwh,
		savingKwhPerYear: outcome.savingKwh,
		shortageM3PerMin: now?.shortageM3PerMin ?? 0,
		machines: (now?.machines ?? []).map(({ id, role, flowM3PerMin, powerKw }) => ({
			id,
			name: machineName(survey, id),
			role,
			flowM3PerMin,
			powerKw
		}))
	};
}

function textOf(
	survey: Survey,
	round: Round | undefined,
	{ outcome, capacityM3PerMin, leaks, parts }: StationReport
): string {
	const { energyKwh, savingKwh, peakKw, peakWithoutKw } = outcome;
	const share = energyKwh > 0 ? ` (${percent(savingKwh / energyKwh)})` : '';
	const heads = [
		`${oneLine(survey.site.name)}: ${figure(capacityM3PerMin)} m³/min of free air at inlet conditions`,
		`A year as it is: ${figure(energyKwh)} kWh, peak ${figure(peakKw)} kW.`,
		`Without the ${leaks.counted} leaks${round ? ` of ${oneLine(round.name)}` : ''}: ${figure(energyKwh - savingKwh)} kWh, peak ${figure(peakWithoutKw)} kW; ${figure(savingKwh)} kWh less${share}.`
	];
	const rows = parts.map(({ outcome: part, now }) => [
		partName(survey, part.id),
		figure(part.hours),
		part.delivered === null ? 'off' : figure(part.delivered.nowM3PerMin),
		figure(part.powerKw),
		figure(part.energyKwh),
		figure(part.energyKwh - part.savingKwh),
		(now?.machines ?? [])
			.filter(({ role }) => role !== 'stopped')
			.map(
				({ id, role, powerKw }) => `${machineName(survey, id)}: ${role} ${figure(powerKw, 3)} kW`
			)
			.join('; ')
	]);
	const columns = [
		{ head: 'part of the year', side: 'left' },
		{ head: 'h/year', side: 'right' },
		{ head: 'm³/min', side: 'right' },
		{ head: 'kW', side: 'right' },
		{ head: 'kWh/year', side: 'right' },
		{ head: 'without leaks', side: 'right' },
		{ head: 'machines', side: 'left' }
	] as const;
	return `${heads.join('\n')}\n\n${table(columns, rows)}\n`;
}
