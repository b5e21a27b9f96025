import type { Catalogue } from '../catalogue.ts';

export const controls: Catalogue['controls'] = {
	numberMissing: 'Bitte geben Sie hier eine Zahl ein.',
	textMissing: 'Bitte geben Sie hier etwas ein.',
	full: (letters) =>
		`Hier haben nur ${letters} Zeichen Platz: Bitte prüfen, ob am Ende etwas abgeschnitten wurde.`,
	choose: 'Bitte wählen …',
	often: 'Häufig verwendet',
	others: 'Alle übrigen',
	showWorking: ', Rechenweg zeigen',
	workedOut: 'So wurde gerechnet',
	fewerSteps: 'Weniger Schritte zeigen',
	everyStep: 'Alle Schritte zeigen',
	close: 'Schließen'
};
