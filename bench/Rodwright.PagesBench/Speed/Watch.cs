namespace Rodwright.PagesBench.Speed;

/// <summary>What is put into the page before its own scripts: notes, by the browser's own clock, when what was there.</summary>
internal static class Watch
{
    /// <summary>Runs in each page before anything else.</summary>
    public const string Script = """
        (() => {
            const bench = window.bench = { socket: [], long: [], ready: {} };
            const Socket = window.WebSocket;
            window.WebSocket = class extends Socket {
                constructor(...with_) {
                    super(...with_);
                    this.addEventListener('message', e => bench.socket.push({ at: performance.now(), size: e.data.byteLength ?? e.data.length, came: true }));
                }
                send(data) {
                    bench.socket.push({ at: performance.now(), size: data.byteLength ?? data.length, came: false });
                    super.send(data);
                }
            };
            new PerformanceObserver(list => { for (const e of list.getEntries()) bench.long.push({ at: e.startTime, took: e.duration }); }).observe({ type: 'longtask' });

            // The frame after the next one begins when the next one is painted.
            bench.painted = () => new Promise(done => requestAnimationFrame(() => requestAnimationFrame(() => done(performance.now()))));

            // From the start of the navigation until something is there and painted.
            bench.until = selector => new Promise(done => {
                const look = () => document.querySelector(selector) && (watch.disconnect(), bench.painted().then(done));
                const watch = new MutationObserver(look);
                watch.observe(document, { subtree: true, childList: true });
                look();
            });

            // One field gets another value; the moments until the rod that follows is painted, ms.
            bench.change = (path, value) => new Promise(done => {
                const field = document.querySelector(`[data-path="${path}"] input`);
                let begun = 0;
                const watch = new MutationObserver(() => {
                    watch.disconnect();
                    const there = performance.now();
                    bench.painted().then(painted => {
                        const since = bench.socket.filter(m => m.at >= begun && m.at <= there);
                        const sent = since.find(m => !m.came)?.at ?? begun;
                        const came = since.filter(m => m.came).at(-1);
                        done({ out: sent - begun, server: came.at - sent, size: came.size, apply: there - came.at, paint: painted - there, whole: painted - begun });
                    });
                });
                watch.observe(document.querySelector('.sheet'), { subtree: true, childList: true });
                field.value = value;
                begun = performance.now();
                field.dispatchEvent(new Event('change', { bubbles: true }));
            });

            // Until the socket has been still for a while: what was changed is kept.
            bench.still = async ms => {
                for (let count = -1; count !== bench.socket.length;) {
                    count = bench.socket.length;
                    await new Promise(done => setTimeout(done, ms));
                }
            };

            // Lengths of the frames from now on; call what comes back to have them.
            bench.frames = () => {
                const from = performance.now();
                const times = [];
                let [last, on] = [0, true];
                const frame = at => { if (last) times.push(at - last); last = at; if (on) requestAnimationFrame(frame); };
                requestAnimationFrame(frame);
                bench.ended = () => { on = false; return { frames: times, long: bench.long.filter(l => l.at >= from).map(l => l.took) }; };
            };
        })();
        """;
}
