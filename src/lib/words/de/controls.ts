import type { Catalogue } from '../catalogue.ts';

export const controls: Catalogue['controls'] = {
	numberMissing: 'Bitte geben Sie hier eine Zahl ein.',
	textMissing: 'Bitte geben Sie hier etwas ein.',
	choose: 'Bitte wählen …',
	often: 'Häufig verwendet',
	others: 'Alle übrigen',
	showWorking: ', Rechenweg zeigen',
	workedOut: 'So wurde gerechnet',
	fewerSteps: 'Weniger Schritte zeigen',
	everyStep: 'Alle Schritte zeigen',
	close: 'Schließen'
};
