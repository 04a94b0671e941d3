import { describe, expect, it } from 'vitest';
import { optionsAmong, parseStartOptions } from '../../../electron/node/options.ts';

const usual = { demo: false, library: undefined, host: undefined, open: true, port: 0, help: false };

describe('the options of npm start', () => {
  it.each([
    [[], usual],
    [['--demo'], { ...usual, demo: true }],
    [['--library', '/srv/plugs', '--no-open'], { ...usual, library: '/srv/plugs', open: false }],
    [['--library=C:\\plugs'], { ...usual, library: 'C:\\plugs' }],
    [['--host', 'loopback', '--port', '4801'], { ...usual, host: 'loopback', port: 4801 }],
    [['-h'], { ...usual, help: true }],
  ])('are read: %j', (args, options) => {
    expect(parseStartOptions(args)).toEqual({ ok: true, value: options });
  });

  it.each([
    [['--colour'], "Unknown option '--colour'"],
    [['demo'], "Unexpected argument 'demo'"],
    [['--host', 'firefox'], '--host firefox: allowed are electron, loopback'],
    [['--port', '80'], '--port 80: give a whole number from 1024 to 65535'],
    [['--port', '48o1'], '--port 48o1: give a whole number'],
    [['--library'], "Option '--library <value>' argument missing"],
    [['--library', ''], '--library: give a folder'],
    [['--demo=yes'], "Option '--demo' does not take an argument"],
  ])('that are wrong are named: %j', (args, words) => {
    const options = parseStartOptions(args);
    expect(options.ok ? '' : options.error).toContain(words);
  });

  it('are found by the desktop host among the switches that Chromium takes for itself', () => {
    expect(optionsAmong(['--disable-gpu', '--demo', '--library=/srv/plugs', '-psn_0_1', 'file.json'])).toEqual({ demo: true, library: '/srv/plugs', files: ['file.json'] });
    expect(optionsAmong(['--library'])).toEqual({ demo: false, library: undefined, files: [] });
  });
});
