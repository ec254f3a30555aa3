using System.Net;
using System.Net.Sockets;

namespace Rodwright.Browser.Tests.Access;

/// <summary>
/// Stands between a browser and the server so that the server sees somebody who is not this machine itself: connections go on from another loopback address.
/// Works without any network.
/// </summary>
public sealed class Relay : IDisposable
{
    private static readonly IPAddress Stranger = IPAddress.Parse("127.0.0.77");
    private readonly TcpListener listener = new(IPAddress.Loopback, 0);
    private readonly CancellationTokenSource stop = new();
    private readonly int server;

    /// <summary>A relay to a server's port.</summary>
    public Relay(int server)
    {
        this.server = server;
        listener.Start();
        _ = Accept();
    }

    /// <summary>The address to go to.</summary>
    public string Address => $"http://127.0.0.1:{((IPEndPoint)listener.LocalEndpoint).Port}";

    public void Dispose()
    {
        stop.Cancel();
        listener.Stop();
    }

    private async Task Accept()
    {
        while (!stop.IsCancellationRequested)
        {
            Socket from;
            try
            {
                from = await listener.AcceptSocketAsync(stop.Token);
            }
            catch (Exception e) when (e is OperationCanceledException or SocketException or ObjectDisposedException)
            {
                return;
            }
            _ = Carry(from);
        }
    }

    private async Task Carry(Socket from)
    {
        using (from)
        using (var to = new Socket(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp))
        {
            to.Bind(new IPEndPoint(Stranger, 0));
            await to.ConnectAsync(IPAddress.Loopback, server, stop.Token);
            await Task.WhenAny(Pump(from, to), Pump(to, from));
        }
    }

    private async Task Pump(Socket from, Socket to)
    {
        var buffer = new byte[1 << 16];
        try
        {
            for (int n; (n = await from.ReceiveAsync(buffer, stop.Token)) > 0;)
                for (var sent = 0; sent < n;) sent += await to.SendAsync(buffer.AsMemory(sent, n - sent), stop.Token);
        }
        catch (Exception e) when (e is OperationCanceledException or SocketException or ObjectDisposedException)
        {
            // Either side has hung up.
        }
    }
}
