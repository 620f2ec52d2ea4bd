"""Python in threads that QGIS has made: garbage is left to the main thread, and what belongs to a thread stays.

Python looks for garbage in whatever thread makes objects. Found in a thread beside QGIS's window, windows and layers
that somebody has let go of would be destroyed there, which Qt does not allow: QGIS crashes, then or later.

Qt's threads work for one task after the other, while Python forgets such a thread at the end of each. pyproj keeps its
PROJ context with the thread, so the next task would meet one that is freed, and crash (seen with pyproj 3.7).
"""

from __future__ import annotations

import ctypes
import gc
import threading
from contextlib import contextmanager
from typing import Iterator

_lock = threading.Lock()
_beside = 0
_here = threading.local()


@contextmanager
def beside_main_thread() -> Iterator[None]:
    """Around work that may be beside the main thread: no garbage is collected there, and Python remembers the thread.

    In the main thread all stays as it is.
    """
    if threading.current_thread() is threading.main_thread():
        yield
        return
    _remember_thread()
    _count(1)
    try:
        yield
    finally:
        _count(-1)


def _remember_thread() -> None:
    """Keep Python's state of this thread until the thread ends: once more asked for than given back."""
    if not getattr(_here, "kept", False):
        ctypes.pythonapi.PyGILState_Ensure()
        _here.kept = True


def _count(step: int) -> None:
    """One thread more or less; the first switches collecting off, the last on again."""
    global _beside
    with _lock:
        before, _beside = _beside, _beside + step
        if before == 0 and gc.isenabled():
            gc.disable()
        elif _beside == 0:
            gc.enable()
