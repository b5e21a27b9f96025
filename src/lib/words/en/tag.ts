/** From the tag that hangs on a joint to its leak. */
export const tag = {
	find: 'Find by tag',
	number: 'Number on the tag',
	open: { leak: 'Open the leak', job: 'Open the job' },
	scan: 'Scan a tag',
	stop: 'Stop the camera',
	camera: 'What the camera sees',
	hold: 'Hold the code on the tag before the camera.',
	empty: 'Type the number on the tag.',
	unknown:
		'No leak of this site has that tag. It may belong to another site, or to a leak that was deleted.',
	noCamera: 'The camera cannot be used here. Type the number on the tag instead.'
};
