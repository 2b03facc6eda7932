import { testPublished } from '../support/published.ts';

testPublished('speedometer.json');
