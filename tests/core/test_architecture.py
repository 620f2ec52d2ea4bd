"""The shape of the code: who may import whom, and which Python it must run on."""

import ast
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
PLUGIN = ROOT / "plugin"
CORE = PLUGIN / "core"

#: Stages in the order of the work; modules directly in core/ that everyone may import come first.
CONTRACTS = {
    "messages", "said_in_units", "progress", "units", "files", "site_columns", "inverses", "papers", "confidence",
}  # fmt: skip
STAGES = [
    {"points"},
    {"gate"},
    {"georeference"},
    {"linework"},
    {"features"},
    {"surface"},
    {"quality"},
    {"contours", "drainage", "alignment", "earthwork"},
    {"handover"},
    {"report"},
    {"job"},
    {"arguments"},
    {"__main__"},
]
RANK = {name: rank for rank, names in enumerate(STAGES) for name in names}
#: Arguments that came with Python 3.10.
LATER_ARGUMENTS = {"zip": {"strict"}, "write_text": {"newline"}, "dataclass": {"slots", "kw_only"}}
FILES = sorted(PLUGIN.rglob("*.py"))
CORE_FILES = sorted(CORE.rglob("*.py"))
RUN_TIME = {"numpy", "scipy", "matplotlib", "pyproj"}
#: What a module may import late, with a message where it is missing.
LATE = {"plugin/core/points/gdal_source.py": {"osgeo"}}


def tree(path):
    return ast.parse(path.read_text(encoding="utf-8"), str(path))


def name_of(path):
    return str(path.relative_to(ROOT))


def imports(path):
    """(level, module, line) of each import; level 0 for an absolute one."""
    for node in ast.walk(tree(path)):
        if isinstance(node, ast.Import):
            for alias in node.names:
                yield 0, alias.name, node.lineno
        elif isinstance(node, ast.ImportFrom):
            if node.module is None:
                for alias in node.names:
                    yield node.level, alias.name, node.lineno
            else:
                yield node.level, node.module, node.lineno


def target_in_core(path, level, module):
    """Name parts below core/ of what a relative import of a file in core/ means; None when it leaves core/."""
    package = path.parent.relative_to(PLUGIN).parts
    base = package[: len(package) - (level - 1)]
    if level - 1 > len(package):
        return None
    parts = base + tuple(module.split("."))
    return parts[1:] if parts[0] == "core" else None


def stage_of(path):
    parts = path.relative_to(CORE).parts
    return parts[0] if len(parts) > 1 else path.stem


def test_there_is_code_to_look_at():
    assert len(CORE_FILES) > 20
    assert CORE / "surface" / "tin.py" in CORE_FILES


@pytest.mark.parametrize("path", CORE_FILES, ids=name_of)
def test_the_core_imports_only_what_every_qgis_brings(path):
    allowed = RUN_TIME | set(standard_library()) | LATE.get(name_of(path), set())
    for level, module, line in imports(path):
        if level == 0:
            assert module.split(".")[0] in allowed, f"{name_of(path)}:{line} imports {module}"


def standard_library():
    if sys.version_info >= (3, 10):
        return sys.stdlib_module_names
    import pkgutil

    return {info.name for info in pkgutil.iter_modules()} - {"qgis"} | set(sys.builtin_module_names)


@pytest.mark.parametrize("path", CORE_FILES, ids=name_of)
def test_a_stage_imports_only_stages_to_its_left(path):
    own = stage_of(path)
    for level, module, line in imports(path):
        if level == 0:
            continue
        parts = target_in_core(path, level, module)
        where = f"{name_of(path)}:{line}"
        assert parts is not None, f"{where} imports from outside the core"
        other = parts[0]
        if own in CONTRACTS or own == "__init__":
            assert other in CONTRACTS, f"{where}: {own} imports {other}"
        elif other not in CONTRACTS and other != own:
            assert RANK[other] < RANK[own], f"{where}: {own} imports {other}"


@pytest.mark.parametrize("path", FILES, ids=name_of)
def test_the_package_is_imported_relatively(path):
    """Installed, it is called otherwise than here."""
    for level, module, line in imports(path):
        if level == 0:
            assert module.split(".")[0] not in ("plugin", "hummock", "core"), f"{name_of(path)}:{line}"


@pytest.mark.parametrize("path", [p for p in CORE_FILES if p.name != "__main__.py"], ids=name_of)
def test_the_core_does_not_print(path):
    for node in ast.walk(tree(path)):
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Name):
            assert node.func.id != "print", f"{name_of(path)}:{node.lineno}"


@pytest.mark.parametrize("path", FILES, ids=name_of)
def test_the_code_is_python_3_9(path):
    ast.parse(path.read_text(encoding="utf-8"), str(path), feature_version=(3, 9))
    for node in ast.walk(tree(path)):
        assert type(node).__name__ not in ("Match", "TryStar"), f"{name_of(path)}:{node.lineno}"
        if isinstance(node, ast.Call):
            given = {keyword.arg for keyword in node.keywords}
            called = getattr(node.func, "attr", getattr(node.func, "id", ""))
            later = given & LATER_ARGUMENTS.get(called, set())
            assert not later, f"{name_of(path)}:{node.lineno}: {called} has {later} only from Python 3.10"


def test_the_core_runs_where_there_is_no_qgis():
    """Every module of the core is imported in a fresh interpreter in which importing qgis fails."""
    modules = []
    for path in CORE_FILES:
        if path.name == "__main__.py":
            continue
        parts = path.relative_to(ROOT).with_suffix("").parts
        modules.append(".".join(parts[:-1] if parts[-1] == "__init__" else parts))
    code = "import sys, importlib\nsys.modules['qgis'] = None\n" + "\n".join(
        f"importlib.import_module({module!r})" for module in modules
    )
    done = subprocess.run([sys.executable, "-W", "ignore", "-c", code], cwd=ROOT, capture_output=True, text=True)
    assert done.returncode == 0, done.stderr
    assert done.stdout == ""
