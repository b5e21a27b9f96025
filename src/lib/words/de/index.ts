import type { Catalogue } from '../catalogue.ts';
import { cautions } from './cautions.ts';
import { charts } from './charts.ts';
import { compressorRoom } from './compressor-room.ts';
import { controls } from './controls.ts';
import { doubts } from './doubts.ts';
import { files } from './files.ts';
import { fixList } from './fix-list.ts';
import { frame } from './frame.ts';
import { helpLink } from './help-link.ts';
import { help } from './help.ts';
import { leak } from './leak.ts';
import { mend } from './mend.ts';
import { mendPlan } from './mend-plan.ts';
import { mending } from './mending.ts';
import { method } from './method.ts';
import { photos } from './photos.ts';
import { planDesk } from './plan-desk.ts';
import { planMap } from './plan-map.ts';
import { proof } from './proof.ts';
import { refusalParts } from './refusal-parts.ts';
import { refusals } from './refusals.ts';
import { savingsReport } from './savings-report.ts';
import { setUp } from './set-up.ts';
import { siteList } from './site-list.ts';
import { sources } from './sources.ts';
import { steps } from './steps.ts';
import { sums } from './sums.ts';
import { supply } from './supply.ts';
import { systemCheck } from './system-check.ts';
import { tag } from './tag.ts';
import { underway } from './underway.ts';
import { walk } from './walk.ts';
import { weigh } from './weigh.ts';

/** German, whole. */
export const german: Catalogue = {
	cautions,
	charts,
	compressorRoom,
	controls,
	doubts,
	files,
	fixList,
	frame,
	helpLink,
	help,
	leak,
	mend,
	mendPlan,
	mending,
	method,
	photos,
	planDesk,
	planMap,
	proof,
	refusalParts,
	refusals,
	savingsReport,
	setUp,
	siteList,
	sources,
	steps,
	sums,
	supply,
	systemCheck,
	tag,
	underway,
	walk,
	weigh
};
