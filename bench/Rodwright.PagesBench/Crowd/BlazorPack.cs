using System.Buffers;
using System.Diagnostics.CodeAnalysis;
using Microsoft.AspNetCore.Connections;
using Microsoft.AspNetCore.SignalR;
using Microsoft.AspNetCore.SignalR.Protocol;

namespace Rodwright.PagesBench.Crowd;

/// <summary>What a browser and a live page speak: the MessagePack protocol under a name of its own.</summary>
public sealed class BlazorPack : IHubProtocol
{
    private readonly MessagePackHubProtocol pack = new();

    /// <inheritdoc/>
    public string Name => "blazorpack";

    /// <inheritdoc/>
    public int Version => 1;

    /// <inheritdoc/>
    public TransferFormat TransferFormat => pack.TransferFormat;

    /// <inheritdoc/>
    public bool IsVersionSupported(int version) => version == Version;

    /// <inheritdoc/>
    public bool TryParseMessage(ref ReadOnlySequence<byte> input, IInvocationBinder binder, [NotNullWhen(true)] out HubMessage? message) => pack.TryParseMessage(ref input, binder, out message);

    /// <inheritdoc/>
    public void WriteMessage(HubMessage message, IBufferWriter<byte> output) => pack.WriteMessage(message, output);

    /// <inheritdoc/>
    public ReadOnlyMemory<byte> GetMessageBytes(HubMessage message) => pack.GetMessageBytes(message);
}
