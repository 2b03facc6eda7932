import { testPublished } from '../support/published.ts';

testPublished('runout.json');
