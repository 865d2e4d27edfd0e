"""Reads DXF files with ezdxf, as a CAD program would, and prints what it finds in each as JSON."""

import collections
import json
import sys

try:
    import ezdxf
    from ezdxf import bbox
except ImportError:
    sys.exit("ezdxf is not there: apt-get install python3-ezdxf")


def found(path):
    document = ezdxf.readfile(path)
    auditor = document.audit()
    model = document.modelspace()
    counts = collections.Counter(e.dxftype() for e in model)
    # Outlines and lines only: how wide a text is depends on the fonts of the machine.
    drawn = [e for e in model if e.dxftype() in ("LWPOLYLINE", "LINE")]
    box = bbox.extents(drawn)
    return {
        "version": document.dxfversion,
        "units": document.units,
        "errors": [e.message for e in auditor.errors],
        "fixes": [e.message for e in auditor.fixes],
        "counts": counts,
        "layers": sorted(layer.dxf.name for layer in document.layers),
        "used": sorted({e.dxf.layer for e in model}),
        "extents": [[p.x, p.y] for p in (box.extmin, box.extmax)] if box.has_data else None,
        "header": [list(document.header[name])[:2] for name in ("$EXTMIN", "$EXTMAX")],
        "texts": [ezdxf.decode_dxf_unicode(e.plain_text()) for e in model.query("TEXT")],
        "areas": {
            layer: [round(box.size.x * box.size.y, 3) for box in boxes(model, layer)]
            for layer in ("STRETCHERS", "HEADERS", "CUTS")
        },
    }


def boxes(model, layer):
    return [bbox.extents([e]) for e in model.query(f'LWPOLYLINE[layer=="{layer}"]')]


print(json.dumps([found(path) for path in sys.argv[1:]]))
