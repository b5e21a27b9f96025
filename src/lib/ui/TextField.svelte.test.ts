import { expect, test } from 'vitest';
import { render } from 'vitest-browser-svelte';
import TextField from './TextField.svelte';

test('what is pasted and does not fit is not cut off without a word', async () => {
	const screen = await render(TextField, {
		props: { label: 'Place', hint: 'For a fitter.', value: undefined, onchange: () => undefined }
	});
	const box = screen.getByLabelText('Place');
	await box.fill('x'.repeat(199));
	await expect.element(screen.getByText('For a fitter.')).toBeVisible();
	await box.fill('x'.repeat(200));
	await expect.element(screen.getByText(/^Only 200 letters have room here/)).toBeVisible();
});

test('a field of several lines takes four thousand letters', async () => {
	const screen = await render(TextField, {
		props: { label: 'Note', rows: 2, value: undefined, onchange: () => undefined }
	});
	const box = screen.getByLabelText('Note');
	await box.fill('x'.repeat(3999));
	expect(screen.getByText(/have room here/).query()).toBeNull();
	await box.fill('x'.repeat(4000));
	await expect.element(screen.getByText(/^Only 4000 letters have room here/)).toBeVisible();
});
