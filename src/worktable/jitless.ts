import * as z from 'zod';

// Evaluated code is forbidden on the page. Whatever reads by a schema takes this in first.
z.config({ jitless: true });
