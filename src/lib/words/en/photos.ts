/** The photos of a leak and of its mending. */
export const photos = {
	title: 'Photos',
	named: (place: number, caption: string) => `Photo ${place}: ${caption}`,
	ofLeak: (place: number) => `Photo ${place} of the leak`,
	ofMending: (place: number) => `Photo ${place} of the mending`,
	missing: (place: number) => `Photo ${place} is missing on this device`,
	caption: 'Caption',
	shows: 'It shows',
	leak: 'The leak',
	mending: 'The mending',
	remove: 'Remove this photo',
	take: 'Take a photo',
	fromFiles: 'Photos from files',
	taking: 'Taking the photo in …'
};
