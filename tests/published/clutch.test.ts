import { testPublished } from '../support/published.ts';

testPublished('clutch.json');
