/**
 * The kinds of picture that a survey holds (a plan's original may be a PDF), by the ending of their entry in the file. A picture is
 * only ever shown as one of these, whatever a file says that it is.
 */
const MEDIA_TYPES: Readonly<Record<string, string>> = {
	png: 'image/png',
	jpg: 'image/jpeg',
	svg: 'image/svg+xml',
	webp: 'image/webp',
	pdf: 'application/pdf'
};

const UNKNOWN_MEDIA_TYPE = 'application/octet-stream';

/** The media type itself when it is one of ours, else the one for unknown bytes. */
export function knownMediaType(mediaType: string): string {
	return Object.values(MEDIA_TYPES).includes(mediaType) ? mediaType : UNKNOWN_MEDIA_TYPE;
}

/** The path of a picture in the survey file. */
export function blobPath(blob: { readonly sha256: string; readonly mediaType: string }): string {
	const ending = Object.keys(MEDIA_TYPES).find((key) => MEDIA_TYPES[key] === blob.mediaType);
	return `blobs/${blob.sha256}.${ending ?? 'bin'}`;
}

/** What a path of the survey file says about the picture; nothing when it is not a picture's path. */
export function blobOfPath(path: string): { sha256: string; mediaType: string } | undefined {
	const [, sha256, ending] = /^blobs\/([0-9a-f]{64})\.([a-z0-9]{1,8})$/.exec(path) ?? [];
	if (sha256 === undefined || ending === undefined) return undefined;
	const known = Object.hasOwn(MEDIA_TYPES, ending) ? MEDIA_TYPES[ending] : undefined;
	return { sha256, mediaType: known ?? UNKNOWN_MEDIA_TYPE };
}
