import { testPublished } from '../support/published.ts';

testPublished('road-load.json');
