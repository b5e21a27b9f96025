/** A floor plan that is looked at, read out. */
export const planMap = {
	picture: (plan: string) => `Floor plan: ${plan}`,
	keys: (plan: string) =>
		`Floor plan ${plan}. Arrow keys move the plan, plus and minus zoom, Enter takes the place under the cross. The list of leaks does everything the plan does.`,
	zoomIn: 'Zoom in',
	zoomOut: 'Zoom out',
	north: 'North arrow'
};
