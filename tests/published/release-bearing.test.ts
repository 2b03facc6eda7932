import { testPublished } from '../support/published.ts';

testPublished('release-bearing.json');
