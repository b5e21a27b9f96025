import { leak } from './leak.ts';

/** How a leak was sized, in words. */
export const EVIDENCE_WORDS = leak.evidence;

/** What the soap film does, short enough to stand under a picture. */
export const SOAP_WORDS = leak.soap;

/** What the soap film does, at length. */
export const SOAP_LOOKS = leak.soapLooks;

export const EDGE_WORDS = leak.edges;
