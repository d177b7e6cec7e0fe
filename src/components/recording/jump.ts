/** Times in the transcript move the player of this page; without this script they open the file at that place. */
const player = document.querySelector<HTMLMediaElement>('#recording');
if (player) {
  document.addEventListener('click', (event) => {
    if (event.ctrlKey || event.metaKey || event.shiftKey || !(event.target instanceof Element)) return;
    const time = event.target.closest<HTMLElement>('a[data-at]');
    if (!time) return;
    event.preventDefault();
    const go = () => {
      player.currentTime = Number(time.dataset['at']);
    };
    // Before anything is fetched there is no place to go to.
    if (player.readyState > 0) go();
    else player.addEventListener('loadedmetadata', go, { once: true });
    player.focus({ preventScroll: true });
    void player.play().catch(() => undefined);
  });
}
