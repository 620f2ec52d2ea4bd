"""Runs every algorithm in a process of its own, with other orders by chance and, if asked, in another language.

``python in_another_process.py SMALL FOLDER [LOCALE]``: SMALL holds the names of the files of the small chain as JSON.
Prints what the algorithms that failed said, as JSON.
"""

from __future__ import annotations

import json
import locale as numbers
import os
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))


def main(small_file: str, folder: str, locale: str = "") -> None:
    from every_algorithm import Small, run_every_one
    from qgis.core import QgsApplication
    from qgis.PyQt.QtCore import QLocale

    running = QgsApplication([], True)
    running.initQgis()
    sys.path.append(os.path.join(QgsApplication.pkgDataPath(), "python", "plugins"))
    from processing.core.Processing import Processing

    from plugin.processing.provider import HummockProvider

    Processing.initialize()
    provider = HummockProvider()  # QGIS does not keep its Python half alive
    QgsApplication.processingRegistry().addProvider(provider)
    if locale:
        QLocale.setDefault(QLocale(locale))
        assert QLocale().toString(1.5, "f", 1) == "1,5"
        assert numbers.localeconv()["decimal_point"] == ("," if os.environ.get("LC_ALL", "").startswith("de") else ".")
    small = Small(*json.loads(Path(small_file).read_text(encoding="utf-8")))
    print(json.dumps(run_every_one(small, Path(folder))))
    sys.stdout.flush()
    os._exit(0)  # QGIS may stumble over its own end


if __name__ == "__main__":
    main(*sys.argv[1:])
