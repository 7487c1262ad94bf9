#!/usr/bin/env node
import { setFlagsFromString } from 'node:v8';

// V8 11 (Node 20) compiles functions anew that will soon be done: on two cores its threads took as long as
// the work itself. With three times the calls before that, `chart` on 24 megapixels takes a seventh less.
// Other editions were not measured, and name the flag as they like.
if (process.versions.v8.startsWith('11.')) setFlagsFromString('--interrupt-budget=400000');
const { runFromShell } = await import('../dist/program/main.js');
await runFromShell(process.argv);
