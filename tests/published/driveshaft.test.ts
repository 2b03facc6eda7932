import { testPublished } from '../support/published.ts';

testPublished('driveshaft.json');
