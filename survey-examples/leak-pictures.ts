/** Pictures of joints for the demo, drawn and not photographed: all of them are invented. */

export const PICTURE_PX = { widthPx: 640, heightPx: 480 };

/** What the joint looks like. */
export type Scene = 'hose' | 'coupling' | 'gun' | 'pipe';

const STEEL =
	'<linearGradient id="s" x2="0" y2="1"><stop stop-color="#dfe3e6"/><stop offset=".35" stop-color="#aeb6bc"/><stop offset="1" stop-color="#59636b"/></linearGradient>';
const BRASS =
	'<linearGradient id="b" x2="0" y2="1"><stop stop-color="#f3dc97"/><stop offset=".4" stop-color="#cfa23f"/><stop offset="1" stop-color="#7a5a18"/></linearGradient>';
const WALL =
	'<linearGradient id="w" x2="1" y2="1"><stop stop-color="#c9cec8"/><stop offset="1" stop-color="#98a09c"/></linearGradient>';

const SCENES: Readonly<Record<Scene, (fresh: boolean) => string>> = {
	hose: (fresh) => {
		const colour = fresh ? '#2f5f8f' : '#3b3f42';
		return `<rect x="0" y="196" width="190" height="56" fill="url(#s)"/><path d="M188 224C300 224 330 214 380 270S520 420 640 400" fill="none" stroke="#23282b" stroke-width="62"/><path d="M188 224C300 224 330 214 380 270S520 420 640 400" fill="none" stroke="${colour}" stroke-width="54"/><path d="M188 212C300 212 330 204 386 256S520 404 640 386" fill="none" stroke="#fff" stroke-opacity=".22" stroke-width="8"/><rect x="176" y="186" width="34" height="76" rx="5" fill="url(#${fresh ? 'b' : 's'})"/>`;
	},
	coupling: (fresh) =>
		`<rect x="286" y="0" width="64" height="170" fill="url(#s)"/><path d="M262 160h112l14 40-14 40H262l-14-40Z" fill="url(#b)"/><rect x="272" y="240" width="92" height="70" rx="8" fill="url(#${fresh ? 'b' : 's'})"/><rect x="264" y="262" width="108" height="24" rx="6" fill="${fresh ? '#2c7d5a' : '#5b5044'}"/><rect x="290" y="310" width="56" height="120" fill="#2d3134"/>`,
	gun: (fresh) =>
		`<path d="M450 0v70q0 40-40 40" fill="none" stroke="#6b7378" stroke-width="16"/><path d="M150 170h250q36 0 40 34l6 30h-96l28 176h-84l-40-170H150Z" fill="${fresh ? '#c94f2a' : '#7b5a4c'}"/><rect x="60" y="182" width="96" height="26" rx="10" fill="url(#s)"/><path d="M262 236q-30 50 8 96" fill="none" stroke="url(#s)" stroke-width="18"/><rect x="300" y="410" width="64" height="70" fill="#2d3134"/>`,
	pipe: (fresh) =>
		`<rect x="0" y="206" width="640" height="78" fill="url(#s)"/><path d="M250 178h140l18 67-18 67H250l-18-67Z" fill="url(#${fresh ? 'b' : 's'})"/><rect x="222" y="196" width="22" height="98" fill="#7d868c"/><rect x="396" y="196" width="22" height="98" fill="#7d868c"/>${fresh ? '<rect x="408" y="204" width="26" height="82" fill="#f4f4ef" fill-opacity=".85"/>' : '<path d="M60 206q30 26 8 78h40q-22-40 0-78Z" fill="#8a5a36" fill-opacity=".55"/>'}`
};

const SPOT: Readonly<Record<Scene, readonly [number, number]>> = {
	hose: [330, 232],
	coupling: [318, 300],
	gun: [110, 196],
	pipe: [400, 270]
};

/** A joint with its tag: foam on it while it leaks, and dry with a new part once it is mended. */
export function leakPicture(tag: number, scene: Scene, foaming: boolean, fresh: boolean): string {
	const [x, y] = SPOT[scene];
	return [
		`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 640 480" width="640" height="480"><defs>${WALL}${STEEL}${BRASS}</defs>`,
		'<rect width="640" height="480" fill="url(#w)"/><path d="M0 96h640M0 330h640M150 0v96M470 96v234M220 330v150" stroke="#8b938f" stroke-width="3"/>',
		SCENES[scene](fresh),
		foaming ? foam(tag, x, y) : '',
		`<path d="M${x + 20} ${y + 20}Q${x + 90} ${y + 60} 500 90" fill="none" stroke="#4a4a44" stroke-width="3"/><path d="M490 80l90-22 24 96-90 22-30-40Z" fill="#f0b429" stroke="#6d5310" stroke-width="3"/><text x="548" y="134" text-anchor="middle" font-family="sans-serif" font-weight="700" font-size="46" fill="#22201a">${tag}</text></svg>`
	].join('');
}

/** Bubbles round the spot, by the tag's own dice. */
function foam(tag: number, x: number, y: number): string {
	let seed = 7919 * tag;
	const share = () => {
		seed = (seed * 48_271) % 2_147_483_647;
		return seed / 2_147_483_647;
	};
	const bubbles = Array.from({ length: 60 }, () => {
		const [turn, far, size] = [share() * 2 * Math.PI, share() ** 0.7, 6 + 16 * share()];
		const at = [x + Math.cos(turn) * far * 78, y + Math.sin(turn) * far * 46 + far * 22];
		return `<circle cx="${at[0]?.toFixed(1)}" cy="${at[1]?.toFixed(1)}" r="${size.toFixed(1)}"/>`;
	});
	return `<g fill="#fff" fill-opacity=".72" stroke="#7f9aa8" stroke-opacity=".7" stroke-width="1.5">${bubbles.join('')}</g>`;
}
