import { testPublished } from '../support/published.ts';

testPublished('hydraulics.json');
