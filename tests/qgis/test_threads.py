"""Windows and layers that nobody holds any more are not destroyed by work beside the main thread."""

from __future__ import annotations

import gc
import threading
import time
import weakref
from pathlib import Path
from typing import Any, List

import pytest


class Loop:
    """Garbage that only the collector finds, with the name of the thread that destroyed it."""

    def __init__(self, where: List[str]) -> None:
        self.me = self
        weakref.finalize(self, lambda: where.append(threading.current_thread().name))


def _work(where: List[str]) -> None:
    """Makes enough objects for any collection to come by itself."""
    kept = [[number] for number in range(200_000)]
    assert len(kept) == 200_000
    where.append("worked")


def test_a_thread_beside_collects_nothing_and_the_main_thread_does() -> None:
    from plugin.processing.threads import beside_main_thread

    where: List[str] = []

    def work() -> None:
        with beside_main_thread():
            _work(where)

    assert gc.isenabled()
    Loop(where)
    thread = threading.Thread(target=work, name="beside")
    thread.start()
    thread.join()
    assert where == ["worked"]
    assert gc.isenabled()
    gc.collect()
    assert where == ["worked", threading.main_thread().name]
    # without it the thread does: the test can fail
    Loop(where)
    thread = threading.Thread(target=_work, args=(where,), name="beside")
    thread.start()
    thread.join()
    assert where[2] == "beside"


def test_the_last_of_several_threads_switches_it_on_again() -> None:
    from plugin.processing.threads import beside_main_thread

    inner, outer, seen = threading.Event(), threading.Event(), []

    def first() -> None:
        with beside_main_thread():
            inner.set()
            outer.wait(10)
        seen.append(gc.isenabled())

    thread = threading.Thread(target=first)

    def second() -> None:
        with beside_main_thread():
            thread.start()
            inner.wait(10)
            outer.set()
            thread.join()
            seen.append(gc.isenabled())

    other = threading.Thread(target=second)
    other.start()
    other.join()
    assert seen == [False, False]
    assert gc.isenabled()


def test_a_job_beside_the_window_leaves_it_to_the_main_thread(
    application: Any, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    from plugin.gui import jobtask

    seen: List[bool] = []

    def work(*_: Any) -> Any:
        seen.append(gc.isenabled())
        raise jobtask.Cancelled

    monkeypatch.setattr(jobtask, "continue_job", work)
    task = jobtask.JobTask(tmp_path, "en", lambda _: None)
    thread = threading.Thread(target=task.run)
    thread.start()
    thread.join()
    task.run()
    assert seen == [False, True]  # beside the window, and in its own thread


def test_what_belongs_to_a_thread_of_qt_outlasts_one_task(application: Any) -> None:
    """PROJ contexts of pyproj do; one that is freed between two tasks ends in a crash."""
    from pyproj import CRS, Transformer
    from qgis.PyQt.QtCore import QRunnable, QThreadPool

    from plugin.processing.threads import beside_main_thread

    own, seen = threading.local(), []

    class Task(QRunnable):
        def run(self) -> None:
            with beside_main_thread():
                seen.append((threading.get_ident(), getattr(own, "tasks", 0)))
                own.tasks = getattr(own, "tasks", 0) + 1
                plan = Transformer.from_crs(CRS.from_user_input("EPSG:4326"), CRS.from_epsg(25832 + len(seen)))
                seen[-1] += (plan.transform(51.0, 9.0)[0],)

    pool = QThreadPool()
    pool.setMaxThreadCount(1)
    pool.setExpiryTimeout(-1)
    for _ in range(3):
        task = Task()
        task.setAutoDelete(False)
        pool.start(task)
        until = time.monotonic() + 20
        while pool.activeThreadCount() and time.monotonic() < until:
            time.sleep(0.01)  # waiting for the pool would end its thread
    assert len({thread for thread, _, _ in seen}) == 1
    assert [tasks for _, tasks, _ in seen] == [0, 1, 2]
