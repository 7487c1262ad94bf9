#!/usr/bin/env node
import { runFromShell } from '../dist/cli/main.js';

await runFromShell(process.argv);
