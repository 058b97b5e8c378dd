"""Reference implementation for the cases of recordings (numpy/scipy). Kept apart from the C# on purpose."""
import numpy as np
from scipy import signal, stats, optimize
FR=1000.0; FL=10**1.5; FH=10**3.9; FA=10**2.45; D2=0.5
_b=(1/(1-np.sqrt(D2)))*(FR**2+FL**2*FH**2/FR**2-np.sqrt(D2)*(FL**2+FH**2)); _c=FL**2*FH**2
F1=np.sqrt((-_b-np.sqrt(_b*_b-4*_c))/2); F4=np.sqrt((-_b+np.sqrt(_b*_b-4*_c))/2)
F2=(3-np.sqrt(5))/2*FA; F3=(3+np.sqrt(5))/2*FA
def _ra(f): return F4**2*f**4/((f**2+F1**2)*np.sqrt(f**2+F2**2)*np.sqrt(f**2+F3**2)*(f**2+F4**2))
def _rc(f): return F4**2*f**2/((f**2+F1**2)*(f**2+F4**2))
def A(f): return 20*np.log10(_ra(np.asarray(f,float))/_ra(FR))
def C(f): return 20*np.log10(_rc(np.asarray(f,float))/_rc(FR))
def mid(n): return 1000*10**(n/10)
def edges(n): return 1000*10**((n-.5)/10),1000*10**((n+.5)/10)
G=10**.3
# IEC 61260-1:2014 class 1, octave: exponent of G, min, max (two public transcriptions agree; edge min 1.2)
MASK=[(0,-.4,.4),(1/8,-.4,.5),(1/4,-.4,.7),(3/8,-.4,1.4),(.5,-.4,5.3),(.5,1.2,np.inf),(1,16.6,np.inf),(2,40.5,np.inf),(3,60,np.inf),(4,70,np.inf)]
def third(om): return 1+(G**(1/6)-1)/(G**.5-1)*(om-1)
def iir(kind,fs):
    p=-2*np.pi*np.array([F1,F1,F2,F3,F4,F4] if kind=='A' else [F1,F1,F4,F4]); z=[0]*(4 if kind=='A' else 2)
    z,p,k=signal.bilinear_zpk(z,p,1,fs); s=signal.zpk2sos(z,p,k); _,h=signal.sosfreqz(s,[2*np.pi*1000/fs]); s[0,:3]/=abs(h[0]); return s
def db(ms): return 10*np.log10(ms)
def tw(y2,fs,tau): a=1-np.exp(-1/(fs*tau)); return signal.lfilter([a],[1,a-1],y2)
def levels(x,fs,gain):
    """LAeq,LCeq,LZeq,LAFmax,LAFmin,LASmax,LAF5..95 (LAF sampled each 0.125 s from 1 s on); gain dB added"""
    ya=signal.sosfilt(iir('A',fs),x); yc=signal.sosfilt(iir('C',fs),x); f=tw(ya**2,fs,.125); s=tw(ya**2,fs,1.0)
    k=f[fs-1::fs//8]; L={'LAeq':db(np.mean(ya**2))+gain,'LCeq':db(np.mean(yc**2))+gain,'LZeq':db(np.mean(x**2))+gain,'LAFmax':db(f.max())+gain,'LASmax':db(s.max())+gain,'LAFmin':db(f[fs-1:].min())+gain}
    for q in (5,10,50,90,95): L['LAF%d'%q]=db(np.quantile(k,1-q/100))+gain
    return L
def welch(x,fs,n):
    f,p=signal.welch(x,fs,'hann',n,n//2,detrend=False); return f,p
def bandsum(f,p,f1,f2):
    d=f[1]; o=np.clip(np.minimum(f2,f+d/2)-np.maximum(f1,f-d/2),0,None); return (p*o).sum()
def low(x,fs):
    """to about 1600 Hz: linear-phase FIR (Kaiser beta 9, 16 d + 1 taps, cut fs/(2 d)), every d-th, d = fs//1600"""
    d=fs//1600
    if d<2: return x,fs
    h=signal.firwin(16*d+1,fs/(2*d),fs=fs,window=('kaiser',9)); y=np.convolve(x,h)[8*d:8*d+len(x)]; return y[::d],fs/d
# ---- the run model of docs/formulas.md (one class, two or more codes, drift column by rule) ----
def runmodel(y,code,t,pair,segs=None):
    """y: runs x segments with nan; code: list; t: minutes; pair (a,b): a minus b. returns dict"""
    y=np.asarray(y,float); code=np.asarray(code); t=np.asarray(t,float); codes=list(dict.fromkeys(code)); R,S=y.shape
    assert all(np.isfinite(y[code==c]).any(0).all() for c in codes)
    mu=np.nanmean(y); Yh=np.zeros((R,S)); SSe=0.; N=0; P=0; blocks={}
    for c in codes:
        r=np.where(code==c)[0]; yy=y[r]; i,j=np.where(np.isfinite(yy)); n=len(r); D=np.zeros((len(i),n+S-1))
        D[np.arange(len(i)),i]=1
        for k,(jj) in enumerate(j):
            if jj>0: D[k,n+jj-1]=1
        b,_,rank,_=np.linalg.lstsq(D,yy[i,j]-mu,rcond=None); assert rank==n+S-1
        e=yy[i,j]-mu-D@b; SSe+=e@e; N+=len(i); P+=n+S-1; bs=np.r_[0,b[n:]]; Yh[r]=b[:n,None]+bs[None,:]+mu; blocks[c]=(r,np.linalg.inv(D.T@D))
    nue=N-P; se2=SSe/nue if nue>0 else np.nan
    def Cq(q):
        M=np.zeros((R,R))
        for c,(r,Gk) in blocks.items():
            n=len(r); F=np.c_[np.eye(n),np.tile(q[1:],(n,1))]; M[np.ix_(r,r)]=F@Gk@F.T
        return M
    q0=np.full(S,1/S); M=Yh@q0; X=np.array([[1. if code[r]==c else 0. for c in codes] for r in range(R)]); drift=R-len(codes)-1>=3
    if drift: X=np.c_[X,t-t.mean()]
    XtX=np.linalg.inv(X.T@X); Q=np.eye(R)-X@XtX@X.T; nu=R-X.shape[1]; RSS=M@Q@M; kbar=np.trace(Q@Cq(q0))/nu if nu>0 else 1/S
    s2=RSS/nu if nu>0 else np.nan; s_run=np.sqrt(s2); floor=False; se2u=se2
    if nu>0 and nue>0 and s2<kbar*se2: sp=(SSe+nu*s2/kbar)/(nue+nu); se2u=sp; s2=kbar*sp; floor=True
    c=np.zeros(X.shape[1]); c[codes.index(pair[0])]=1; c[codes.index(pair[1])]=-1; w=X@XtX@c
    def line(q):
        d=w@(Yh@q); ww=w@w; A1=ww*s2; br=w@Cq(q)@w-kbar*ww; A2=0. if abs(br)<1e-12 else se2u*br; V=A1+A2; SE=np.sqrt(V)
        df=V*V/(A1*A1/nu+(A2*A2/nue if nue>0 else 0)); T=stats.t.ppf(.975,df); T9=stats.t.ppf(.95,df)
        return dict(d=d,se=SE,df=df,lo95=d-T*SE,hi95=d+T*SE,p=2*stats.t.sf(abs(d)/SE,df),lo90=d-T9*SE,hi90=d+T9*SE)
    out={'overall':line(q0),'s_run':s_run,'nu_run':nu,'s_e':np.sqrt(se2),'nu_e':nue,'kbar':kbar,'floor_applied':int(floor),'drift_in_model':int(drift)}
    for k in range(S): out['seg.%s'%(segs[k] if segs else k+1)]=line(np.eye(S)[k])
    return out
def holm(p):
    p=np.asarray(p); o=np.argsort(p,kind='stable'); m=len(p); h=np.empty(m); c=0.
    for i,k in enumerate(o): c=max(c,min(1,(m-i)*p[k])); h[k]=c
    return h
# ---- ring: one band for all codes, blind ----
def ringband(f,logpsd,code,lo=150.,hi=290.):
    """f: 1 Hz-ish grid; logpsd: lines (run,segment) x f in dB; code per line. Each code has the same weight.
    floor: straight line in dB through the medians of the flanks 120..145 and 295..340 Hz. excess e(f). Peak = largest excess in lo..hi
    after a 5 Hz moving mean; band = out from the peak until excess < 25 % of the peak's (in dB), at least +-10 Hz, at most lo..hi.
    Returns None when the peak's excess is under 3 dB."""
    codes=list(dict.fromkeys(code)); code=np.asarray(code); m=np.mean([logpsd[code==c].mean(0) for c in codes],0)
    a=(f>=120)&(f<=145); b=(f>=295)&(f<=340); fa,fb=f[a].mean(),f[b].mean(); la,lb=np.median(m[a]),np.median(m[b])
    e=m-(la+(lb-la)*(f-fa)/(fb-fa)); k=max(1,int(round(5/(f[1]-f[0])))); k+=1-k%2; e=np.convolve(e,np.ones(k)/k,'same')
    w=np.where((f>=lo)&(f<=hi))[0]; p=w[np.argmax(e[w])]
    if e[p]<3: return None
    i=p
    while i>w[0] and e[i-1]>=.25*e[p]: i-=1
    j=p
    while j<w[-1] and e[j+1]>=.25*e[p]: j+=1
    f1=max(lo,min(f[i],f[p]-10)); f2=min(hi,max(f[j],f[p]+10))
    return dict(peak=f[p],excess=e[p],f1=f1,f2=f2)
# ---- ring after an impact ----
def ringdecay(x,fs,f1,f2):
    """x: low-branch samples around ONE impact (0.5 s or more before, 0.8 s or more after the last hit).
    Band-pass Butterworth 2nd order prototype f1..f2 run BACKWARDS in time (ISO 3382-2: B T > 4), analytic envelope squared,
    block means of 1/(2 B) s; noise N = mean of blocks more than 0.1 s before the first onset;
    start: last block within 0.4 s after the largest one that is a local maximum and within 6 dB of it; fit from one block later, for 0.6 s;
    maximum likelihood of m(t) = a exp(-13.8155 t/T) + N for gamma blocks (shape 1); interval: profile likelihood, chi2(1)."""
    s=signal.butter(2,[f1,f2],'bandpass',fs=fs,output='sos'); y=signal.sosfilt(s,x[::-1])[::-1]; e=np.abs(signal.hilbert(y))**2
    B=f2-f1; n=max(1,int(round(fs/(2*B)))); k=len(e)//n; b=e[:k*n].reshape(k,n).mean(1); dt=n/fs
    top=int(np.argmax(b)); base=max(1,top-int(.1/dt)-int(.35/dt)); N=b[:base].mean()
    cand=[i for i in range(top,min(k-2,top+int(.4/dt))) if b[i]>=b[i-1] and b[i]>=b[i+1] and b[i]>=b[top]/4]; st=cand[-1] if cand else top
    i0=st+1; i1=min(k,i0+int(.6/dt)); v=b[i0:i1]; t=np.arange(len(v))*dt; snr=db(b[st]/N)
    def nll(a,T): m=a*np.exp(-13.815510557964274*t/T)+N; return np.sum(np.log(m)+v/m)
    def prof(T):
        r=optimize.minimize_scalar(lambda la:nll(np.exp(la),T),bounds=(np.log(v.max())-8,np.log(v.max())+4),method='bounded',options=dict(xatol=1e-9)); return r.fun
    g=np.exp(np.linspace(np.log(.02),np.log(3),121)); q=np.array([prof(T) for T in g]); o=int(np.argmin(q))
    r=optimize.minimize_scalar(lambda lt:prof(np.exp(lt)),bounds=(np.log(g[max(0,o-1)]),np.log(g[min(120,o+1)])),method='bounded',options=dict(xatol=1e-8)); T=np.exp(r.x); q0=r.fun
    inside=g[q<=q0+1.9207]
    return dict(T=T,lo=inside.min() if len(inside) else T,hi=inside.max() if len(inside) else T,snr=snr,start=(st*n)/fs)
# ---- typed levels against a log ----
def align(entries,log_t,log_l,window,search=(-30,30),step=.1):
    """entries: list (time_s, low, high) laptop clock; log: level per second or faster on its own clock. offset o: log time = laptop time + o.
    For every o: window [t+o-window, t+o]; predicted low/high = 10 % and 90 % quantile of log levels there; cost = mean |typed mid - predicted mid| capped at 3 dB (robust).
    returns offset (parabola through the three lowest) and half-range over which cost <= min + 2 SE(min)"""
    os=np.arange(search[0],search[1]+step/2,step); cost=[]
    E=np.asarray(entries); 
    C=np.full((len(os),len(E)),np.nan)
    for i,o in enumerate(os):
        for j,(t,lo,hi) in enumerate(E):
            a,b=np.searchsorted(log_t,[t+o-window,t+o]); 
            if b-a>=3: v=log_l[a:b]; C[i,j]=min(3.,abs((lo+hi)/2-(np.quantile(v,.1)+np.quantile(v,.9))/2))
    ok=np.isfinite(C).all(0); C=C[:,ok]; m=C.mean(1); k=int(np.argmin(m)); 
    d=C-C[k]; se=d.std(1,ddof=1)/np.sqrt(C.shape[1]); inside=os[(d.mean(1)<=2*se)]
    # connected part around k
    i=j=k; good=d.mean(1)<=2*se+1e-12
    while i>0 and good[i-1]: i-=1
    while j<len(os)-1 and good[j+1]: j+=1
    return dict(offset=(os[i]+os[j])/2,best=os[k],lo=os[i],hi=os[j],cost=m[k],used=int(ok.sum()))
# ---- joint decay: one T for several impacts of one run and segment, each with its own amplitude and noise ----
_LT=np.linspace(np.log(.02),np.log(3),161)
def _profile(x,fs,f1,f2):
    s=signal.butter(2,[f1,f2],'bandpass',fs=fs,output='sos'); y=signal.sosfilt(s,x[::-1])[::-1]; e=np.abs(signal.hilbert(y))**2
    B=f2-f1; n=max(1,int(round(fs/(2*B)))); k=len(e)//n; b=e[:k*n].reshape(k,n).mean(1); dt=n/fs
    top=int(np.argmax(b)); base=max(1,top-int(.1/dt)-int(.35/dt)); N=b[:base].mean()
    cand=[i for i in range(top,min(k-2,top+int(.4/dt))) if b[i]>=b[i-1] and b[i]>=b[i+1] and b[i]>=b[top]/4]; st=cand[-1] if cand else top
    i0=st+1; i1=min(k,i0+int(.6/dt)); v=b[i0:i1]; t=np.arange(len(v))*dt
    la=np.linspace(np.log(v.max())-5,np.log(v.max())+3,121); E=np.exp(-13.815510557964274*t[None,:]/np.exp(_LT)[:,None])
    q=np.empty((len(_LT),len(la)))
    for i,a in enumerate(np.exp(la)): m=a*E+N; q[:,i]=(np.log(m)+v/m).sum(1)
    return q.min(1),db(b[st]/N)
def joint(events,fs,f1=140.,f2=290.,least=20.):
    """events: list of signals round one impact each. Events whose peak stands under `least` dB over the noise do not count."""
    P=[_profile(x,fs,f1,f2) for x in events]; good=[q for q,s in P if s>=least]
    if not good: return None
    q=np.sum(good,0); o=int(np.argmin(q)); 
    if 0<o<len(q)-1: a,b,c=q[o-1:o+2]; sh=.5*(a-c)/(a-2*b+c)
    else: sh=0.
    ins=np.exp(_LT[q<=q[o]+1.9207]); return dict(T=float(np.exp(_LT[o]+sh*(_LT[1]-_LT[0]))),lo=ins.min(),hi=ins.max(),events=len(good),snr=[round(float(s),1) for _,s in P])
# ---- calibrator tone ----
def tone(x,fs,f0=1000.):
    """1 s blocks, 0.5 s hop, Hann: tone = bins within 2 % of f0; pure when tone / everything from 50 Hz on >= 0.95.
    Longest stretch of pure blocks whose levels stay within 0.2 dB of their median, 4 s or more. Level = median of blocks without the first and last, dB re mean square 1."""
    n=fs; w=signal.windows.hann(n,sym=False); u=(w**2).sum()*n/ n; f=np.fft.rfftfreq(n,1/fs); L=[];pure=[]
    for i in range(0,len(x)-n+1,n//2):
        p=np.abs(np.fft.rfft(x[i:i+n]*w))**2*2/(u*n); k=abs(f-f0)<=.02*f0; t=p[k].sum(); L.append(10*np.log10(t+1e-30)); pure.append(t>=.95*p[f>=50].sum())
    best=None;i=0
    while i<len(L):
        if not pure[i]: i+=1; continue
        j=i
        while j+1<len(L) and pure[j+1] and abs(L[j+1]-np.median(L[i:j+2]))<=.2 and (np.max(np.abs(np.array(L[i:j+2])-np.median(L[i:j+2])))<=.2): j+=1
        if (j-i)*.5+1>=4 and (best is None or j-i>best[1]-best[0]): best=(i,j)
        i=j+1
    if best is None: return None
    v=np.array(L[best[0]+1:best[1]]); return dict(level=float(np.median(v)),range=float(v.max()-v.min()),start=best[0]*.5,end=best[1]*.5+1)
def clipped(x,full): 
    """runs of 3 and more neighbouring samples at |x| >= full and equal"""
    m=(np.abs(x)>=full); n=0;i=0
    while i<len(x):
        if m[i]:
            j=i
            while j+1<len(x) and m[j+1] and x[j+1]==x[i]: j+=1
            if j-i+1>=3: n+=1
            i=j+1
        else: i+=1
    return n
