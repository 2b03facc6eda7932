import { testPublished } from '../support/published.ts';

testPublished('tyre.json');
