import { expect, test, vi } from 'vitest';
import { render } from 'vitest-browser-svelte';
import { userEvent } from 'vitest/browser';
import { createFormat } from '#lib/words/format.ts';
import QuantityField from './QuantityField.svelte';

const format = createFormat({
	locale: 'de-AT',
	currency: 'EUR',
	units: { pressure: 'psi', flow: 'cfm', length: 'in' }
});

test('a pressure is shown and typed in the unit of the site and kept in bar', async () => {
	const onchange = vi.fn();
	const screen = await render(QuantityField, {
		props: { label: 'Pressure', of: 'pressure', value: 7, format, onchange }
	});
	const box = screen.getByLabelText('Pressure, psi');
	// derived: 7 bar / 0.0689476 bar per psi = 101.526 psi, shown to four figures
	await expect.element(box).toHaveValue('101,5');
	await box.fill('100,0');
	await userEvent.tab();
	expect(onchange).toHaveBeenCalledOnce();
	expect(onchange.mock.calls[0]?.[0]).toBeCloseTo(6.894_757, 5);
});

test('passing through a field changes nothing, although its figure is shown rounded', async () => {
	const onchange = vi.fn();
	const screen = await render(QuantityField, {
		props: { label: 'Hole', of: 'length', value: 0.03, format, onchange }
	});
	await screen.getByLabelText('Hole, in').click();
	await userEvent.tab();
	expect(onchange).not.toHaveBeenCalled();
});

test('what is out of range stays as typed, is explained, and is not taken', async () => {
	const onchange = vi.fn();
	const screen = await render(QuantityField, {
		props: { label: 'Altitude', unit: 'm', value: 320, least: -400, most: 4000, format, onchange }
	});
	const box = screen.getByLabelText('Altitude, m');
	await box.fill('9000');
	await userEvent.tab();
	await expect
		.element(screen.getByRole('alert'))
		.toHaveTextContent('This is out of range; accepted from -400 to 4000. Check it.');
	await expect.element(box).toHaveValue('9000');
	expect(onchange).not.toHaveBeenCalled();
});

test('an emptied field is missing, not zero', async () => {
	const onchange = vi.fn();
	const screen = await render(QuantityField, {
		props: { label: 'Price', value: 0.2, format, onchange }
	});
	await screen.getByLabelText('Price').fill('');
	await userEvent.tab();
	expect(onchange).toHaveBeenCalledWith(undefined);
});
