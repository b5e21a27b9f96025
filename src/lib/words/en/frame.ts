import { pluralsOf } from '../plural.ts';

const many = pluralsOf('en');

/** What stands round every page of a site: header, places, reminders, faults. */
export const frame = {
	language: 'Language',
	places: {
		name: 'Places',
		setUp: 'Set up',
		walk: 'Walk',
		weigh: 'Weigh',
		mend: 'Mend',
		prove: 'Prove'
	},
	skip: 'Skip to the page',
	allSites: 'All sites:',
	save: { saved: 'Saved', saving: 'Saving …', 'not-saved': 'NOT saved' },
	undo: 'Undo',
	redo: 'Redo',
	toFile: 'To file',
	toFileAbout: 'Save the survey to a file',
	filed: (file: string) => `Saved to ${file}, among the downloads of this device.`,
	notWritten: 'The last change could not be written.',
	inMemory: (why: string) => `${why} What you record is kept in memory meanwhile.`,
	saveNow: 'Save everything to a file now',
	updateReady: 'A newer version is ready. What you have recorded stays as it is.',
	update: 'Use the newer version',
	opening: 'Opening the survey …',
	notOpened: 'This site cannot be opened',
	unreadAbout:
		'This version cannot know what all of it means, so it shows and changes nothing of it. The file holds every record and picture as they are kept here, for a version that can read it.',
	saveUnread: 'Save it to a file as it is',
	backToList: 'Back to the list of sites',

	clockBeforeChange: (now: string, changed: string) =>
		`The clock of this device says ${now}, and the survey was last changed ${changed}. One of the two is wrong. Nothing is lost by it, but dates go onto reports: set the clock.`,
	clockCannotBe: (now: string) =>
		`The clock of this device says ${now}, which cannot be. Nothing is lost by it, but dates go onto reports: set the clock.`,
	leaveIt: 'Leave it',
	inNoFile: (count: number, shown: string) =>
		many(count, {
			one: 'One change is in no survey file yet. A file is the backup, should this device be lost.',
			other: `${shown} changes are in no survey file yet. A file is the backup, should this device be lost.`
		}),
	saveToFile: 'Save to a file',
	later: 'Later',

	fault: 'This page met a fault',
	faultTryAgain:
		'What you have recorded is kept. Try the page again; if it happens once more, save the survey to a file with “To file” above.',
	tryAgain: 'Try again',
	faultLoadAgain:
		'What you have recorded is kept. Load the page again; if it happens once more, open the site from the list and save it to a file.',
	noPage: 'There is no such page',
	noPageAbout: 'The address may have been cut short. Your surveys are in the list of sites.',
	toList: 'To the list of sites',
	titles: { notHere: 'Not here', fault: 'A fault' }
};
