/** The way from a place to its part of the guide. */
export const helpLink = {
	about: (place: string) => `Help with ${place}`
};
