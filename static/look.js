// Before the first picture is drawn, so that a page chosen dark never flashes light.
// The choice is written by src/lib/session/look.svelte.ts.
try {
	if (localStorage.getItem('airtally-look') === 'dark') document.documentElement.dataset.look = 'dark';
} catch {
	// A browser that keeps nothing shows the page light.
}
