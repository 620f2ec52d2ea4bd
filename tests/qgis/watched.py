"""What the system says about files of a folder while something works there: Linux's inotify, by its C functions."""

from __future__ import annotations

import ctypes
import os
import struct
from pathlib import Path
from typing import Any, Dict, List, Sequence, Tuple

#: Of <sys/inotify.h>, see inotify(7).
EVENTS = {0x2: "modified", 0x40: "moved away", 0x80: "put there", 0x100: "created", 0x200: "deleted"}
OVERFLOW, FOLDER = 0x4000, 0x40000000


class Watch:
    """``with Watch(folders) as watch: ...``; ``watch.events`` then has (name, event), in their order."""

    def __init__(self, folders: Sequence[Path]) -> None:
        self._folders = folders
        self.events: List[Tuple[str, str]] = []

    def __enter__(self) -> Watch:
        library = ctypes.CDLL(None, use_errno=True)
        self._queue = library.inotify_init1(os.O_NONBLOCK | os.O_CLOEXEC)
        assert self._queue >= 0, os.strerror(ctypes.get_errno())
        for folder in self._folders:
            watched = library.inotify_add_watch(self._queue, os.fsencode(folder), sum(EVENTS))
            assert watched >= 0, os.strerror(ctypes.get_errno())
        return self

    def __exit__(self, *_: Any) -> None:
        data = b""
        try:
            while True:
                data += os.read(self._queue, 1 << 16)
        except BlockingIOError:
            pass
        finally:
            os.close(self._queue)
        place = 0
        while place < len(data):
            _, kind, _, size = struct.unpack_from("iIII", data, place)
            name = data[place + 16 : place + 16 + size].rstrip(b"\0").decode()
            assert not kind & OVERFLOW, "too much happened to be told"
            if not kind & FOLDER:
                self.events += [(name, event) for bit, event in EVENTS.items() if kind & bit]
            place += 16 + size

    def of_final_names(self) -> Dict[str, List[str]]:
        """What happened to files whose names do not begin with a dot."""
        told: Dict[str, List[str]] = {}
        for name, event in self.events:
            if name and not name.startswith("."):
                told.setdefault(name, []).append(event)
        return told
