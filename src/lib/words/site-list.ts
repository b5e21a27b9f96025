import { siteList as english } from './en/site-list.ts';
import { wordsOf } from './language.ts';

export const siteList = wordsOf('siteList', english);
