import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, it } from 'vitest';
import { SettingsScreen } from '../../../../renderer/features/settings/index.ts';
import { useStore } from '../../../../renderer/state/store.ts';
import { freshPage } from '../support/page.ts';

const user = userEvent.setup();

it('a setting that cannot be saved still holds, and the screen says so', async () => {
  const host = freshPage();
  await useStore.getState().start();
  render(<SettingsScreen />);
  host.failing['settings.save'] = { code: 'read-only', message: 'The library is open for reading only.' };
  await user.click(screen.getByRole('radio', { name: 'Dark' }));
  expect(screen.getByRole('radio', { name: 'Dark' }).getAttribute('aria-checked')).toBe('true');
  expect(screen.getByRole('alert').textContent).toContain('The library is open for reading only.');
});

it('the demo workshop is opened and left from the settings', async () => {
  freshPage();
  await useStore.getState().start();
  render(<SettingsScreen />);
  await user.click(screen.getByRole('button', { name: 'Open the demo workshop' }));
  expect(await screen.findByRole('button', { name: 'Open your own library' })).toBeTruthy();
});
