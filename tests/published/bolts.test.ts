import { testPublished } from '../support/published.ts';

testPublished('bolts.json');
