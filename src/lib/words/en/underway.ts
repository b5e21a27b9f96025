/** Work that takes a while. */
export const underway = {
	stop: 'Stop'
};
