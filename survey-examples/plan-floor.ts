import { box, circle, stroke } from './plan-ink.ts';
import {
	booth,
	conveyor,
	press,
	pump,
	robot,
	stairs,
	tank,
	track,
	tunnelKiln,
	unit,
	words
} from './plan-machines.ts';

/** Everything that stands on the floor, room by room. */
export function machines(): string[] {
	return [
		...slipHouse(),
		...compressorHouse(),
		...workshopAndOffices(),
		...pressHall(),
		...glazeLine(),
		...kilnHall(),
		...packingHall()
	];
}

function slipHouse(): string[] {
	return [
		tank([8.4, 10.2], 1.7, 'Ark 1'),
		tank([12.6, 10.2], 1.7, 'Ark 2'),
		tank([16.8, 10.2], 1.7, 'Ark 3'),
		unit(11, 13.6, 7.4, 1.9, 'Filter press'),
		pump([8.2, 13.8], 'P1'),
		pump([8.2, 16.4], 'P2'),
		unit(14.6, 16.6, 3.8, 1.5, 'Sieve', 17)
	];
}

function compressorHouse(): string[] {
	return [
		unit(6.4, 22.2, 4.2, 2.3, 'C1'),
		unit(6.4, 25.6, 4.2, 2.3, 'C2'),
		unit(6.4, 29, 4.2, 2.3, 'C3 trim'),
		tank([13, 24], 1, 'R1'),
		unit(12, 29.6, 2.2, 1.8, 'Dryer', 16),
		tank([15.2, 28], 1, 'R2'),
		stroke([
			[10.6, 23.4],
			[12, 23.6]
		]),
		stroke([
			[10.6, 26.8],
			[11.5, 26.8],
			[13, 25]
		]),
		stroke([
			[10.6, 30.2],
			[11.2, 30.2],
			[11.2, 26.8]
		]),
		stroke([
			[13, 25],
			[13, 29.6]
		]),
		stroke([
			[14.2, 30.4],
			[15.2, 30.4],
			[15.2, 29]
		])
	];
}

function workshopAndOffices(): string[] {
	return [
		unit(6, 39.2, 1, 3.6, ''),
		unit(9, 37.6, 4.6, 1.3, 'Bench', 17),
		unit(9, 40.2, 3, 1.2, 'Lathe', 16),
		tank([14, 40.8], 0.6),
		unit(15.6, 37.6, 2.6, 1.6, 'Stores', 16),
		stairs(16.2, 45, 3.6, 1.5),
		words('Office', [7.8, 46.4], 19),
		words('Lab', [13.1, 49.9], 19),
		words('Mess room', [18.3, 50], 17),
		box(6, 49.2, 2.6, 1.2),
		box(11, 50.6, 3.6, 0.8)
	];
}

function pressHall(): string[] {
	return [
		press(25, 8.6, 'Press 1'),
		press(31.6, 8.6, 'Press 2'),
		press(38.2, 8.6, 'Press 3'),
		press(25, 17.8, 'Press 4'),
		press(31.6, 17.8, 'Press 5'),
		press(38.2, 17.8, 'Press 6'),
		conveyor(25, 14.2, 18, 1.6),
		unit(26, 24.6, 3.6, 1.4, 'Fettling', 16),
		unit(31, 24.6, 3.6, 1.4, 'Fettling', 16),
		unit(39.6, 24, 3.2, 2.4, 'Die store', 16)
	];
}

function glazeLine(): string[] {
	return [
		conveyor(24.6, 36.8, 17.4, 1.2),
		conveyor(24.6, 45, 17.4, 1.2),
		conveyor(40.8, 38, 1.2, 7),
		booth(26, 33.6, 'Booth 1', true),
		booth(30.8, 33.6, 'Booth 2', true),
		booth(26, 46.8, 'Booth 4', false),
		booth(30.8, 46.8, 'Booth 3', false),
		unit(35.6, 33.6, 4.4, 2.6, 'Drier', 18),
		unit(35.6, 46.8, 3.2, 2.2, 'Stamper', 16),
		tank([25.4, 40.4], 0.9),
		tank([25.4, 42.8], 0.9),
		pump([28, 40.2], 'P3'),
		pump([28, 43], 'P4')
	];
}

function kilnHall(): string[] {
	return [
		track([48.4, 7.8], [48.4, 24.6], [19.4]),
		track([88, 7.8], [88, 24.6], [12.4]),
		track([48.4, 10.6], [88, 10.6]),
		track([48.4, 16.8], [88, 16.8]),
		track([48.4, 21.6], [88, 21.6], [52, 60.6, 63, 78]),
		tunnelKiln(51.4, 8.8, 34, 'Kiln 1'),
		tunnelKiln(51.4, 15, 34, 'Kiln 2'),
		unit(54, 24, 4.8, 2.8, 'Kiln 3', 19),
		unit(60.2, 24, 4.8, 2.8, 'Kiln 4', 19),
		unit(79.6, 23.6, 5.4, 2.6, 'Drier', 18)
	];
}

function packingHall(): string[] {
	return [
		conveyor(50, 33.6, 18, 1.3),
		conveyor(50, 38, 18, 1.3),
		conveyor(50, 42.4, 18, 1.3),
		words('Sorting 1', [63.6, 34.25], 16),
		words('Sorting 2', [63.6, 38.65], 16),
		words('Sorting 3', [63.6, 43.05], 16),
		...[52, 56.4, 60.8].flatMap((x) => [33.6, 38, 42.4].map((y) => box(x, y + 1.6, 2.4, 0.9))),
		unit(65.4, 32.9, 2.8, 2.7, 'Printer', 16),
		unit(65.4, 37.3, 2.8, 2.7, 'Printer', 16),
		unit(49.4, 46.4, 4.6, 1.8, 'Box maker', 17),
		conveyor(68.2, 33.6, 1.2, 10.1),
		robot([73.6, 38.6], 3.2, 'Palletiser'),
		conveyor(77.4, 37.8, 10.4, 1.6),
		unit(79.4, 34.4, 2.8, 2.4, 'Strapper', 16),
		box(84, 36.9, 3.4, 3.4, { rx: 3 }),
		circle([85.7, 38.6], 1.4, { fill: '#fefdfa' }),
		words('Wrapper', [85.7, 38.6], 16),
		...[40.6, 43.4, 46.2].map((y) => box(86.4, y + 0.6, 1.6, 1.6)),
		box(73.2, 45, 1.5, 1.5),
		box(75.2, 45, 1.5, 1.5),
		box(77.2, 45, 1.5, 1.5),
		box(73.2, 47, 1.5, 1.5),
		box(75.2, 47, 1.5, 1.5),
		words('Dispatch', [82.4, 47.2], 20)
	];
}
