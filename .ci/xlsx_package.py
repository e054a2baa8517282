# Shared helpers (Python 3 stdlib only): read an XLSX/XLSM OPC package, resolve cells, styles, strings, relationships.
import zipfile, posixpath, re, hashlib
import xml.etree.ElementTree as ET

SML = {'http://schemas.openxmlformats.org/spreadsheetml/2006/main', 'http://purl.oclc.org/ooxml/spreadsheetml/main'}
REL = {'http://schemas.openxmlformats.org/officeDocument/2006/relationships', 'http://purl.oclc.org/ooxml/officeDocument/relationships'}
XMLNS = '{http://www.w3.org/XML/1998/namespace}'
MAX_PART = 1 << 30

def ln(e):
    t = e.tag if not isinstance(e, str) else e
    return t.rsplit('}', 1)[-1] if isinstance(t, str) else ''

def ns(e):
    t = e.tag if not isinstance(e, str) else e
    return t[1:].split('}', 1)[0] if isinstance(t, str) and t.startswith('{') else ''

def parse(data):
    # expat in ElementTree never fetches external entities; refuse internal DTDs as well (billion laughs)
    head = data[:4096]
    if b'<!DOCTYPE' in head or b'<!ENTITY' in head:
        raise ValueError('DOCTYPE in part')
    return ET.fromstring(data)

def rid(e, name='id'):
    for k, v in e.attrib.items():
        if ln(k) == name and ns(k) in REL:
            return v
    return None

class Package:
    def __init__(self, path):
        self.path = path
        self.z = zipfile.ZipFile(path)
        self.names = {}
        for i in self.z.infolist():
            if i.is_dir():
                continue
            n = '/' + i.filename.replace('\\', '/').lstrip('/')
            self.names.setdefault(n.lower(), (n, i))
        self._tree = {}
        self._rels = {}
        self.defaults, self.overrides = {}, {}
        ct = self.tree('/[Content_Types].xml')
        for e in ct:
            if ln(e) == 'Default':
                self.defaults[e.get('Extension', '').lower()] = e.get('ContentType')
            elif ln(e) == 'Override':
                self.overrides[e.get('PartName', '').lower()] = e.get('ContentType')

    def has(self, n): return n.lower() in self.names
    def parts(self): return [v[0] for v in self.names.values()]

    def data(self, n):
        i = self.names[n.lower()][1]
        if i.file_size > MAX_PART:
            raise ValueError('part too large: ' + n)
        return self.z.read(i)

    def tree(self, n):
        k = n.lower()
        if k not in self._tree:
            self._tree[k] = parse(self.data(n))
        return self._tree[k]

    def ctype(self, n):
        return self.overrides.get(n.lower()) or self.defaults.get(n.rsplit('.', 1)[-1].lower() if '.' in n else '')

    def rels(self, n):
        """{rId: (type-tail, resolved target or external URL, external?)} of part n ('/' for the package)."""
        if n in self._rels:
            return self._rels[n]
        if n == '/':
            rp, base = '/_rels/.rels', '/'
        else:
            d, b = posixpath.split(n)
            rp, base = posixpath.join(d, '_rels', b + '.rels'), d
        out = {}
        if self.has(rp):
            for e in self.tree(rp):
                if ln(e) != 'Relationship':
                    continue
                t, ext = e.get('Target', ''), e.get('TargetMode') == 'External'
                if not ext:
                    t = posixpath.normpath(posixpath.join(base, t)) if not t.startswith('/') else posixpath.normpath(t)
                    t = self.names[t.lower()][0] if t.lower() in self.names else t
                out[e.get('Id')] = (e.get('Type', '').rsplit('/', 1)[-1], t, ext)
        self._rels[n] = out
        return out

    def workbook(self):
        for t, target, ext in self.rels('/').values():
            if t == 'officeDocument' and not ext:
                return target
        raise ValueError('no workbook part')

    def sheets(self):
        """[(name, part, state, kind)] in workbook order."""
        wb = self.workbook()
        rels = self.rels(wb)
        out = []
        for e in self.tree(wb).iter():
            if ln(e) == 'sheet' and ns(e) in SML:
                r = rels.get(rid(e))
                out.append((e.get('name'), r[1] if r else None, e.get('state', 'visible'), r[0] if r else None))
        return out

    def reltarget(self, src, typ):
        for t, target, ext in self.rels(src).values():
            if t == typ and not ext and self.has(target):
                return target
        return None

    def strings(self):
        p = self.reltarget(self.workbook(), 'sharedStrings')
        out = []
        if p:
            for si in self.tree(p):
                if ln(si) == 'si':
                    out.append(si)
        return out

def rich(si):
    """(plain text, run signature) of an si/is element; phonetic text ignored in plain text."""
    text, runs = [], []
    for e in si:
        n = ln(e)
        if n == 't':
            text.append(e.text or '')
            runs.append(('', e.text or ''))
        elif n == 'r':
            t = ''.join(x.text or '' for x in e if ln(x) == 't')
            pr = [x for x in e if ln(x) == 'rPr']
            text.append(t)
            runs.append((canon(pr[0], unordered=True) if pr else '', t))
    if all(r[0] == '' for r in runs):
        runs = [('', ''.join(text))]
    return unesc(''.join(text)), tuple((a, unesc(b)) for a, b in runs)

_ESC = re.compile(r'_x([0-9A-Fa-f]{4})_')
def unesc(s):
    return _ESC.sub(lambda m: chr(int(m.group(1), 16)), s) if '_x' in s else s

_DEFAULTS = {  # attributes whose presence with the schema default means nothing
    ('', '1'): None,
}
BOOL = {'true': '1', 'false': '0', 'on': '1', 'off': '0'}
IGNORE_NS_ATTR = {'http://schemas.microsoft.com/office/spreadsheetml/2009/9/ac'}  # x14ac:dyDescent

def normval(v):
    if v in BOOL:
        return BOOL[v]
    if re.fullmatch(r'[-+]?\d*\.?\d+(?:[eE][-+]?\d+)?', v):
        try:
            f = float(v)
            return repr(int(f)) if f == int(f) and abs(f) < 1e15 else repr(f)
        except (ValueError, OverflowError):
            pass
    return v

def nsk(u):  # strict and transitional namespaces compare equal only within one file; keep as is
    return u

def canon(e, rels=None, mapattr=None, unordered=False, drop=(), exact=False):
    """Canonical text of an element: sorted attributes, normalised numbers/booleans, r:id replaced by its target,
    whitespace-only text dropped unless xml:space=preserve. mapattr(localtag, attr, value) -> replacement."""
    out = []
    def go(x):
        if not isinstance(x.tag, str):
            return ''
        if x.tag in drop or ln(x) in drop:
            return ''
        at = []
        for k, v in x.attrib.items():
            u = ns(k)
            if u in IGNORE_NS_ATTR or k.endswith('}Ignorable') or ln(k) == 'uid' and 'revision' in u:
                continue
            if rels is not None and u in REL:
                v = 'rel:%s' % (rels(v),)
            elif mapattr:
                m = mapattr(ln(x), ln(k), v)
                if m is None:
                    v = v if exact else normval(v)
                elif m == '':
                    continue
                else:
                    v = m
            else:
                v = v if exact else normval(v)
            at.append('%s=%r' % (k, v))
        at.sort()
        kids = [go(c) for c in x]
        if unordered:
            kids.sort()
        t = x.text or ''
        tail = ''
        if not t.strip() and x.get(XMLNS + 'space') != 'preserve' and len(x):
            t = ''
        elif not t.strip() and ln(x) not in ('t', 'v', 'f'):
            t = ''
        return '<%s %s>%s%s</>' % (x.tag, ' '.join(at), t, ''.join(kids))
    return go(e)

def short(s, n=160):
    s = re.sub(r'\{[^}]*\}', '', s)
    return s if len(s) <= n else s[:n] + '…'

class Styles:
    """Resolves a cellXfs index to a value that does not depend on indices."""
    def __init__(self, pkg):
        self.x, self.cache, self.dx = [], {}, []
        self.named = {}
        self.tablestyles = ''
        p = pkg.reltarget(pkg.workbook(), 'styles')
        self.fonts, self.fills, self.borders, self.fmts, self.sx = [], [], [], {}, []
        self.names = {}
        self.colors = ''
        if not p:
            return
        for e in pkg.tree(p):
            n = ln(e)
            if n == 'numFmts':
                for f in e: self.fmts[f.get('numFmtId')] = f.get('formatCode')
            elif n == 'fonts': self.fonts = [canon(f, unordered=True) for f in e if ln(f) == 'font']
            elif n == 'fills': self.fills = [canon(f, unordered=True) for f in e if ln(f) == 'fill']
            elif n == 'borders': self.borders = [canon(f, drop=()) for f in e if ln(f) == 'border']
            elif n == 'cellStyleXfs': self.sx = [f for f in e if ln(f) == 'xf']
            elif n == 'cellXfs': self.x = [f for f in e if ln(f) == 'xf']
            elif n == 'cellStyles':
                for f in e:
                    if ln(f) == 'cellStyle': self.names[f.get('xfId', '0')] = (f.get('name'), f.get('builtinId'))
            elif n == 'dxfs':
                for f in e:
                    if ln(f) == 'dxf': self.dx.append(canon(f, mapattr=lambda t, a, v: '' if a == 'numFmtId' else None))
            elif n == 'tableStyles': self.tablestyles = canon(e, mapattr=lambda t, a, v: self.dxf(v) if a == 'dxfId' else ('' if a == 'count' else None))
            elif n == 'colors': self.colors = canon(e)

    def dxf(self, i):
        try: return 'dxf:' + self.dx[int(i)]
        except (ValueError, IndexError): return 'dxf:?'

    def _at(self, l, i):
        try: return l[int(i)]
        except (ValueError, IndexError, TypeError): return None

    def fmt(self, i):
        return self.fmts.get(i, i)

    def xf(self, i):
        i = i or '0'
        if i in self.cache:
            return self.cache[i]
        x = self._at(self.x, i)
        if x is None:
            r = None if self.x else ()
        else:
            kids = tuple(sorted(canon(k) for k in x if ln(k) in ('alignment', 'protection')))
            fl = tuple(sorted((ln(k), normval(v)) for k, v in x.attrib.items() if ln(k) in ('quotePrefix', 'pivotButton') and normval(v) != '0'))
            r = (self.fmt(x.get('numFmtId', '0')), self._at(self.fonts, x.get('fontId', '0')), self._at(self.fills, x.get('fillId', '0')),
                 self._at(self.borders, x.get('borderId', '0')), kids, fl, self.names.get(x.get('xfId', '0')))
        self.cache[i] = r
        return r

    def namedset(self):
        return {v[0]: (self._at(self.sx, k) is not None and (self.fmt(self.sx[int(k)].get('numFmtId', '0')), self._at(self.fonts, self.sx[int(k)].get('fontId', '0')),
                self._at(self.fills, self.sx[int(k)].get('fillId', '0')), self._at(self.borders, self.sx[int(k)].get('borderId', '0')))) for k, v in self.names.items()}

def col2n(s):
    n = 0
    for c in s: n = n * 26 + ord(c) - 64
    return n
def n2col(n):
    s = ''
    while n: n, r = divmod(n - 1, 26); s = chr(65 + r) + s
    return s

def cells(pkg, part, sst, want_rich=True):
    """Yields (ref, type, value, formula-dict-or-None, style-index). value: float|str|bool|None; text from shared strings resolved.
    formula: dict(text, t, si, ref)."""
    rowno = 0
    root = pkg.tree(part)
    for sd in root:
        if ln(sd) != 'sheetData' or ns(sd) not in SML:
            continue
        for row in sd:
            if ln(row) != 'row':
                continue
            rowno = int(row.get('r')) if row.get('r') else rowno + 1
            colno = 0
            for c in row:
                if ln(c) != 'c':
                    continue
                ref = c.get('r')
                if ref:
                    m = re.match(r'([A-Za-z]+)(\d+)$', ref)
                    colno = col2n(m.group(1).upper()) if m else colno + 1
                    if m: ref = m.group(1).upper() + m.group(2)
                else:
                    colno += 1
                    ref = n2col(colno) + str(rowno)
                t, v, f, val = c.get('t', 'n'), None, None, None
                for k in c:
                    n = ln(k)
                    if n == 'v': v = k.text or ''
                    elif n == 'f': f = {'text': k.text or '', 't': k.get('t', 'normal'), 'si': k.get('si'), 'ref': k.get('ref'), 'attrs': {a: b for a, b in k.attrib.items() if a not in ('t', 'si', 'ref')}}
                    elif n == 'is': val = rich(k) if want_rich else rich(k)[0]
                if t == 's':
                    if v not in (None, ''):
                        try: val = rich(sst[int(v)]) if want_rich else rich(sst[int(v)])[0]
                        except (IndexError, ValueError): val = '#BAD-SST#'
                elif t == 'b':
                    if v is not None: val = v.strip() in ('1', 'true')
                elif t in ('str', 'e', 'd'):
                    val = unesc(v) if v is not None else None
                elif t == 'inlineStr':
                    pass
                else:
                    if v is not None and v.strip() != '':
                        try: val = float(v)
                        except ValueError: val = v
                yield ref, t, val, f, c.get('s')

def sha(b): return hashlib.sha256(b).hexdigest()[:12]
