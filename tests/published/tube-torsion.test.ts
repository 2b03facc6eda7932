import { testPublished } from '../support/published.ts';

testPublished('tube-torsion.json');
