#!/usr/bin/env node
import { runFromShell } from '../dist/program/main.js';

await runFromShell(process.argv);
